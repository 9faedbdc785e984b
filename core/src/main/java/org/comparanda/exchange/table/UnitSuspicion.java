package org.comparanda.exchange.table;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.comparanda.measurement.LengthUnit;

/**
 * Whether a column looks as if it were in another unit than the one taken for it. Three signs: on
 * the same bones it stands apart from its sibling measurements by about the factor of another unit;
 * it so stands apart from the animals' body; or more than half of its values lie outside the usual
 * range and another unit would bring them in.
 */
final class UnitSuspicion {
  /**
   * How near to a unit's factor the median must come. Shapes differ less: against the protocol's
   * proportions no measurement of the demo animals is off by more than a factor 1.6, so that 10 (a
   * centimetre) and 25.4 (an inch) are still told from 1, and mostly from each other.
   */
  private static final double NEAR = Math.log(2);

  private final TableColumn column;
  private final Map<LengthUnit, Long> broughtIn = new EnumMap<>(LengthUnit.class);
  private final ThinnedMedian fromMiddle = new ThinnedMedian();
  private final ThinnedMedian fromSiblings = new ThinnedMedian();
  private final ThinnedMedian fromBody = new ThinnedMedian();
  private long seen;
  private long outside;
  private String source = "";

  UnitSuspicion(TableColumn column) {
    this.column = column;
  }

  TableColumn column() {
    return column;
  }

  /** A value as typed. */
  void saw(double value, UsualRange range) {
    source = range.source();
    double mm = value * column.unit().factor();
    if (!range.holds(mm)) {
      outside++;
      for (LengthUnit unit : LengthUnit.values()) {
        if (range.holds(value * unit.millimetres())) {
          broughtIn.merge(unit, 1L, Long::sum);
        }
      }
    }
    if (mm > 0) {
      fromMiddle.add(Math.log(mm / range.middle()));
    }
    seen++;
  }

  /** Natural log of how many times too large the value is by its siblings in the same row. */
  void apartFromSiblings(double apart) {
    fromSiblings.add(apart);
  }

  /** Natural log of how many times too large the value is by the animal's mass or length. */
  void apartFromBody(double apart) {
    fromBody.add(apart);
  }

  /** What it looks like, with the reason in words. */
  Optional<Doubt> doubt() {
    return byScale(
            fromSiblings, "against the other measurements of the same bones it is out of scale")
        .or(() -> byScale(fromBody, "against the animals' body mass or length it is out of scale"))
        .or(this::byRange);
  }

  /** What a column looks like, and why. */
  record Doubt(LengthUnit unit, String reason) {}

  private Optional<Doubt> byScale(ThinnedMedian apart, String reason) {
    OptionalDouble median = apart.value();
    if (median.isEmpty()) {
      return Optional.empty();
    }
    return Arrays.stream(LengthUnit.values())
        .filter(unit -> Math.abs(shift(unit)) > 2 * NEAR)
        .filter(unit -> Math.abs(median.getAsDouble() + shift(unit)) < NEAR)
        .min(Comparator.comparingDouble(unit -> Math.abs(median.getAsDouble() + shift(unit))))
        .map(unit -> new Doubt(unit, reason));
  }

  private Optional<Doubt> byRange() {
    if (2 * outside <= seen) {
      return Optional.empty();
    }
    double middle = fromMiddle.value().orElse(0);
    return broughtIn.entrySet().stream()
        .filter(e -> 2 * e.getValue() > seen)
        .min(Comparator.comparingDouble(e -> Math.abs(middle + shift(e.getKey()))))
        .map(e -> new Doubt(e.getKey(), "most of its values lie outside " + source));
  }

  private double shift(LengthUnit unit) {
    return Math.log(unit.millimetres() / column.unit().factor());
  }
}
