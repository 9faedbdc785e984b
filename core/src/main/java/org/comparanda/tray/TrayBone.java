package org.comparanda.tray;

import java.util.Optional;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.reference.AnimalId;

/**
 * One bone of a tray, without its readings.
 *
 * @param animal set for a practice bone that belongs to an animal on the shelf
 * @param standing whether it may be measured
 */
public record TrayBone(
    BoneId id,
    TrayId tray,
    Optional<AnimalId> animal,
    ElementKey element,
    Side side,
    Portion portion,
    BoneState state,
    Standing standing,
    String remarks) {
  /** Whether a bone may be measured, or was set aside as possibly human. */
  public enum Standing {
    OPEN,
    STOPPED
  }
}
