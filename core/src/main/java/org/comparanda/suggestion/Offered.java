package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;

/**
 * A bone of a comparative animal, or the mean of its bones, offered to the shelf without it.
 *
 * @param unit number of the animal in its element
 */
record Offered(int unit, BoneRow bone, Sample.Offer offer, Level level) {
  /** What the row counts as. */
  enum Level {
    /** One bone of several. */
    BONE,
    /** The mean of several bones. */
    ANIMAL,
    /** The only bone of its animal: counts as both. */
    ONLY_BONE;

    boolean countsAsBone() {
      return this != ANIMAL;
    }

    boolean countsAsAnimal() {
      return this != BONE;
    }
  }

  /** Everything that an element has to offer, in catalogue order. */
  static List<Offered> all(ElementRows rows, Counting counting) {
    List<Offered> offered = new ArrayList<>();
    for (int unit = 0; unit < rows.animals().size(); unit++) {
      AnimalRow animal = rows.animals().get(unit);
      if (counting == Counting.BONES) {
        for (BoneRow bone : animal.bones()) {
          offered.add(new Offered(unit, bone, Sample.Offer.ANIMAL, Level.ONLY_BONE));
        }
      } else {
        Level level = animal.bones().size() == 1 ? Level.ONLY_BONE : Level.BONE;
        for (BoneRow bone : animal.bones()) {
          offered.add(new Offered(unit, bone, Sample.offerOf(bone.side()), level));
        }
        if (level == Level.BONE) {
          offered.add(new Offered(unit, animal.mean(), Sample.Offer.ANIMAL, Level.ANIMAL));
        }
      }
    }
    return offered;
  }
}
