package org.comparanda.capture;

import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.BoneId;

/**
 * What lies open on a bench and is not accepted yet.
 *
 * @param bone the bone in hand
 * @param element as which element it is being measured
 * @param place field and pass
 * @param text half-typed text, as it stands
 */
public record Draft(BoneId bone, ElementKey element, Place place, String text) {}
