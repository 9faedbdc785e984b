package org.comparanda.tray;

import org.comparanda.measurement.BoneId;

/** Left and right of one animal, measured side by side. */
public record Pair(BoneId left, BoneId right) {
  public Pair {
    if (left.equals(right)) {
      throw new IllegalArgumentException("A pair is two bones, not \"" + left + "\" twice.");
    }
  }

  /** Whether this bone is one of the two. */
  public boolean holds(BoneId bone) {
    return left.equals(bone) || right.equals(bone);
  }

  /** The other one of the two. */
  public BoneId beside(BoneId bone) {
    return left.equals(bone) ? right : left;
  }
}
