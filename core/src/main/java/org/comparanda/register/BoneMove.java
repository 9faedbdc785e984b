package org.comparanda.register;

import java.util.List;
import java.util.Optional;
import org.comparanda.bone.Element;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.ShelfBone;
import org.comparanda.statistics.Outcome;

/**
 * A bone that was registered under the wrong element, side or portion goes where it belongs, with
 * its flags and all its values. Where another bone of the animal stands there, the two change
 * places: sides taken for each other are put right at once.
 */
public record BoneMove(BonePlace from, BonePlace to) {
  /** The move, or why it can't be one. */
  public static Outcome<BoneMove> of(BonePlace from, BonePlace to, Protocol protocol) {
    if (from.equals(to)) {
      return Outcome.none(
          "The bone stands as " + to.words() + " already. Nothing was moved.",
          "Say another element, side or portion.");
    }
    Optional<Element> known = protocol.element(to.element());
    if (known.isEmpty()) {
      return Outcome.none(
          "\"" + to.element() + "\" is no element of the protocol. Nothing was moved.",
          "Correct the word.");
    }
    return to.fits(known.get())
        ? Outcome.of(new BoneMove(from, to))
        : Outcome.none(
            "The "
                + known.get().name()
                + " has no side \""
                + to.side().name().toLowerCase(java.util.Locale.ROOT)
                + "\". Nothing was moved.",
            "An element of the midline is axial; any other is left, right or not known.");
  }

  /** Where a bone that stands at a place stands after the move. */
  public BonePlace after(BonePlace place) {
    return place.equals(from) ? to : place.equals(to) ? from : place;
  }

  /** The card after the move; the same card where it has no such bone. */
  public AnimalCard apply(AnimalCard card) {
    List<ShelfBone> bones = card.animal().bones().stream().map(this::moved).toList();
    boolean there = card.animal().bones().stream().map(BonePlace::of).anyMatch(from::equals);
    return there ? card.withAnimal(card.animal().withBones(bones)) : card;
  }

  private ShelfBone moved(ShelfBone bone) {
    BonePlace place = after(BonePlace.of(bone));
    return new ShelfBone(
        place.element(), place.side(), place.portion(), bone.flags(), bone.values());
  }

  /** Values of the moved bone that the new element has no measurement for; they feed no fit. */
  public List<MeasurementCode> strangers(AnimalCard before, Protocol protocol) {
    return before.animal().bones().stream()
        .filter(bone -> BonePlace.of(bone).equals(from))
        .flatMap(bone -> bone.values().keySet().stream())
        .filter(code -> protocol.measurement(to.element(), code).isEmpty())
        .toList();
  }
}
