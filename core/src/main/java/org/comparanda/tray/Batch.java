package org.comparanda.tray;

import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;

/**
 * Bones keyed one after the other that are the same element and side.
 *
 * @param left how many are still to come, at least 1
 */
public record Batch(TrayId tray, ElementKey element, Side side, Portion portion, int left) {
  /** The most that one batch may hold. */
  public static final int MOST = 500;

  public Batch {
    if (left < 1 || left > MOST) {
      throw new IllegalArgumentException(
          "A batch holds 1 to " + MOST + " bones, not " + left + ".");
    }
  }

  /** So many more bones like this one. */
  public static Batch like(TrayBone bone, int more) {
    return new Batch(bone.tray(), bone.element(), bone.side(), bone.portion(), more);
  }

  /** The same batch with another count. */
  public Batch withLeft(int other) {
    return new Batch(tray, element, side, portion, other);
  }
}
