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
 * @param dimension how sentences say more and less of it
 * @param unit mm, g, or empty for a plain number
 */
record Quantity(
    String name,
    Optional<ElementKey> element,
    Optional<MeasurementCode> code,
    String noun,
    Dimension dimension,
    String unit) {
  static final String BODY_LENGTH = "body_length";
  static final String BODY_MASS = "body_mass";

  static Quantity bodyLength() {
    return new Quantity(
        BODY_LENGTH, Optional.empty(), Optional.empty(), "body", Dimension.LENGTH, "mm");
  }

  static Quantity bodyMass() {
    return new Quantity(BODY_MASS, Optional.empty(), Optional.empty(), "body", Dimension.MASS, "g");
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
