package org.comparanda.gui.shelf.skeleton;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.comparanda.bone.Side;
import org.comparanda.capture.Passes;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PersonId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BoneEdit;
import org.comparanda.register.ChangeNote;
import org.comparanda.register.SkeletonBone;
import org.comparanda.statistics.Outcome;

/** Puts the values of an element's measured bones on the animal's card. */
record Landing(ElementBones bones) {
  /** Stores the card with them in that person's name; says what came of it. */
  String put(PersonId who) {
    ChangeNote note = new ChangeNote(who, "measured on the Shelf, " + bones.element().key());
    return card()
        .then(after -> bones.room().keeper().register().change(bones.card(), after, note))
        .fold(
            changes -> bones.room().words().get("skeleton.stored", changes.size()),
            none -> bones.room().words().said((none.reason() + " " + none.remedy()).strip()));
  }

  /** The card with them, or why not: nothing measured, a field open. */
  Outcome<AnimalCard> card() {
    List<Piece> measured =
        bones.sides().stream().flatMap(this::pieces).filter(Piece::begun).toList();
    boolean open = measured.stream().anyMatch(piece -> !piece.passes().complete());
    if (open || measured.isEmpty()) {
      return Outcome.none(words(open ? "skeleton.open" : "skeleton.nothing"), "");
    }
    Outcome<AnimalCard> after = Outcome.of(bones.card());
    for (Piece piece : measured) {
      after = after.then(piece::landed);
    }
    return after;
  }

  private Stream<Piece> pieces(Side side) {
    return bones.parts(side).stream().map(part -> new Piece(bones.at(side, part), side));
  }

  /** One bone of a side, or one piece of it. */
  private record Piece(ElementBones bones, Side side) {
    Passes passes() {
      return bones.passes(side);
    }

    boolean begun() {
      return !passes().values().isEmpty();
    }

    Outcome<AnimalCard> landed(AnimalCard to) {
      SkeletonBone bone = bones.bone(side);
      Map<MeasurementCode, Optional<Double>> mm = new TreeMap<>();
      passes().values().forEach((code, value) -> mm.put(code, Optional.of(value)));
      return new BoneEdit(
              bones.element().key(), side, bone.held().portion(), Optional.of(bone.cardFlags()), mm)
          .apply(to, bones.room().keeper().protocol());
    }
  }

  private String words(String key) {
    return bones.room().words().get(key);
  }
}
