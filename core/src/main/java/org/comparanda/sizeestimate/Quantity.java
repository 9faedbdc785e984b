package org.comparanda.sizeestimate;

import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.BoneInHand;

/**
 * Something with a size: body length, body mass, or a measurement of an element.
 *
 * @param name as asked
 * @param element the element measured; empty for the whole body
 * @param code the measurement; empty for the whole body
 * @param noun how sentences call it, for example {@code mandible GL}
 * @param words how sentences say more and less of it
 * @param unit mm, g, or empty for a plain number
 */
record Quantity(
    String name,
    Optional<ElementKey> element,
    Optional<MeasurementCode> code,
    String noun,
    Words words,
    String unit) {
  static final String BODY_LENGTH = "body_length";
  static final String BODY_MASS = "body_mass";

  /** The words for more and less of it. */
  enum Words {
    LENGTH("longer", "longest", "shorter", "shortest"),
    MASS("heavier", "heaviest", "lighter", "lightest"),
    SIZE("larger", "largest", "smaller", "smallest");

    final String more;
    final String most;
    final String less;
    final String least;

    Words(String more, String most, String less, String least) {
      this.more = more;
      this.most = most;
      this.less = less;
      this.least = least;
    }
  }

  static Quantity bodyLength() {
    return new Quantity(
        BODY_LENGTH, Optional.empty(), Optional.empty(), "body", Words.LENGTH, "mm");
  }

  static Quantity bodyMass() {
    return new Quantity(BODY_MASS, Optional.empty(), Optional.empty(), "body", Words.MASS, "g");
  }

  /** Whether this is the same thing, whatever it was called. */
  boolean sameAs(Quantity other) {
    return element.equals(other.element)
        && code.equals(other.code)
        && (element.isPresent() || name.equals(other.name));
  }

  boolean isBodyMass() {
    return name.equals(BODY_MASS) && element.isEmpty();
  }

  /** This quantity's value on a bone in hand; empty when that is another bone or not measured. */
  Optional<Double> of(BoneInHand bone) {
    boolean sameElement =
        element.isPresent()
            && (element.get().equals(bone.element())
                || bone.element().equals(ElementKey.UNNAMED)
                || element.get().equals(ElementKey.UNNAMED));
    return sameElement ? code.map(bone.values()::get) : Optional.empty();
  }
}
