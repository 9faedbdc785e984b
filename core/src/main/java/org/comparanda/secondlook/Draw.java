package org.comparanda.secondlook;

import java.util.Optional;
import org.comparanda.measurement.BoneId;

/**
 * What was decided on a bone's first call, once and for all: a later change of the rule moves
 * nothing that was decided before.
 *
 * @param position of the call among all first calls, from 1
 * @param call number of the first call
 * @param why why the bone is looked at again; empty when it is not
 * @param byRule the rule that decided
 */
public record Draw(
    long position, long call, BoneId bone, Optional<Queued.Why> why, String byRule) {}
