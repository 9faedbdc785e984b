package org.comparanda.gui.shelf.skeleton;

import java.util.Optional;
import org.comparanda.bone.HeldBone;
import org.comparanda.bone.Side;
import org.comparanda.gui.capture.StateWords;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.PersonId;
import org.comparanda.register.SkeletonBone;

/** What is said of one bone of a skeleton: kept, or why it stays as it was. */
record BoneSaying(ElementBones bones, Side side) {
  /** Keeps it; a bone that stands on the card with another part is moved with a reason instead. */
  Optional<String> keep(HeldBone said, PersonId who) {
    SkeletonBone before = bones.bone(side);
    boolean otherPart = said.portion() != before.held().portion();
    if (otherPart && bones.onCard(side).isPresent()) {
      return Optional.of(bones.room().words().get("skeleton.portion.card"));
    }
    if (otherPart && bones.parts(side).contains(said.portion())) {
      return Optional.of(bones.room().words().get("skeleton.piece.taken"));
    }
    bones.room().skeletons().save(before.withHeld(said), who);
    return Optional.empty();
  }

  /** What one key recorded, in words. */
  String recorded() {
    Words words = bones.room().reading().words();
    return words.get(
        "state.fine.recorded",
        StateWords.of(bones.bone(side).held().state(), bones.element().growingEnds(), words));
  }
}
