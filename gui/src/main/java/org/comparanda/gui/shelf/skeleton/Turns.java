package org.comparanda.gui.shelf.skeleton;

import java.util.Optional;
import org.comparanda.bone.Side;
import org.comparanda.capture.SideBySide;
import org.comparanda.gui.shelf.skeleton.SkeletonViewModel.Hands;

/** Which bone of an element comes to hand: both sides in turn, or one of them. */
record Turns(ElementBones bones, Hands hands) {
  /** The side whose field is due. */
  Side due() {
    if (bones.sides().size() == 1) {
      return Side.AXIAL;
    }
    return hands == Hands.BOTH
        ? bones.both().map(SideBySide::turn).map(Turns::side).orElse(Side.LEFT)
        : hands == Hands.LEFT ? Side.LEFT : Side.RIGHT;
  }

  /** The side that is due after a reading of this one; empty when it goes on here. */
  Optional<Side> after(Side now) {
    Side due = due();
    return due != now && !bones.passes(due).complete() ? Optional.of(due) : Optional.empty();
  }

  /** The side of the newest reading, where both are measured in turn. */
  Optional<Side> newest() {
    return hands == Hands.BOTH
        ? bones.both().map(SideBySide::newest).map(Turns::side)
        : Optional.empty();
  }

  private static Side side(SideBySide.Turn turn) {
    return turn == SideBySide.Turn.LEFT ? Side.LEFT : Side.RIGHT;
  }
}
