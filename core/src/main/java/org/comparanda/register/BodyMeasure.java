package org.comparanda.register;

import java.time.LocalDate;
import java.util.Optional;

/**
 * How a body length or mass came about; the value itself stands with the animal.
 *
 * @param on day it was taken, empty when not known
 * @param how method in words (tape along the back, hung from a spring balance); may be empty
 * @param kind on the fresh animal, or estimated
 */
public record BodyMeasure(Optional<LocalDate> on, String how, Kind kind) {
  /**
   * On the fresh animal, estimated (from a carcass, from parts, from an equation), or not known.
   */
  public enum Kind {
    NOT_KNOWN,
    FRESH,
    ESTIMATED
  }

  static BodyMeasure notKnown() {
    return new BodyMeasure(Optional.empty(), "", Kind.NOT_KNOWN);
  }

  BodyMeasure withOn(Optional<LocalDate> other) {
    return new BodyMeasure(other, how, kind);
  }

  BodyMeasure withHow(String other) {
    return new BodyMeasure(on, other, kind);
  }

  BodyMeasure withKind(Kind other) {
    return new BodyMeasure(on, how, other);
  }
}
