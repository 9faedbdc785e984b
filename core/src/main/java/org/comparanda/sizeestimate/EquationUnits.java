package org.comparanda.sizeestimate;

import java.util.Optional;
import org.comparanda.measurement.LengthUnit;

/** Units that published equations are written in. */
final class EquationUnits {
  private EquationUnits() {}

  /** How many mm one unit of length is. */
  static Optional<Double> millimetres(String unit) {
    return LengthUnit.ofSymbol(unit).map(LengthUnit::millimetres);
  }

  /** How many of the shelf's unit (mm or g) one unit is. */
  static Optional<Double> ofShelf(String unit) {
    return switch (unit) {
      case "g" -> Optional.of(1.0);
      case "kg" -> Optional.of(1000.0);
      case "t" -> Optional.of(1_000_000.0);
      default -> millimetres(unit);
    };
  }
}
