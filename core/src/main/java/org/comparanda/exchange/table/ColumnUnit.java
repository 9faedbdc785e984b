package org.comparanda.exchange.table;

import java.util.Optional;
import org.comparanda.measurement.LengthUnit;

/**
 * The unit of one column.
 *
 * @param factor what a number is multiplied by to be stored (mm, g, or as it is)
 * @param stated symbol that the header or a person gave
 * @param said who said so
 */
record ColumnUnit(double factor, Optional<String> stated, SaidBy said) {
  enum SaidBy {
    NOBODY,
    HEADER,
    PERSON
  }

  static ColumnUnit none() {
    return new ColumnUnit(1, Optional.empty(), SaidBy.NOBODY);
  }

  static ColumnUnit of(LengthUnit unit, SaidBy said) {
    return new ColumnUnit(unit.millimetres(), Optional.of(unit.symbol()), said);
  }

  /** Grams, kilograms or milligrams. */
  static Optional<ColumnUnit> ofMass(String symbol) {
    return switch (symbol) {
      case "g" -> Optional.of(new ColumnUnit(1, Optional.of(symbol), SaidBy.HEADER));
      case "kg" -> Optional.of(new ColumnUnit(1000, Optional.of(symbol), SaidBy.HEADER));
      case "mg" -> Optional.of(new ColumnUnit(0.001, Optional.of(symbol), SaidBy.HEADER));
      default -> Optional.empty();
    };
  }

  /** In words behind the code; nothing for a plain number. */
  String words() {
    return stated.map(s -> " [" + s + "]").orElse("");
  }
}
