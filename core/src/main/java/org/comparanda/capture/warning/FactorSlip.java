package org.comparanda.capture.warning;

import java.util.Optional;
import org.comparanda.measurement.Length;

/**
 * The value lies outside the shelf, and inside it when taken times a factor that people slip by.
 *
 * @param factor from the value typed to the value meant
 * @param words what may have happened
 */
record FactorSlip(double factor, String words) implements EntryCheck {
  static FactorSlip tenTimesTooLarge() {
    return new FactorSlip(0.1, "Ten times too large for the shelf");
  }

  static FactorSlip tenTimesTooSmall() {
    return new FactorSlip(10, "Ten times too small for the shelf");
  }

  static FactorSlip inchesForMillimetres() {
    return new FactorSlip(25.4, "These look like inches");
  }

  static FactorSlip millimetresForInches() {
    return new FactorSlip(1 / 25.4, "These look like millimetres read as inches");
  }

  @Override
  public Optional<Warning> check(Entry entry) {
    double meant = entry.mm() * factor;
    return entry
        .rangeMissed()
        .filter(range -> meant >= range.lowMm() && meant <= range.highMm())
        .map(
            range ->
                new Warning(
                    words + ": did you mean " + Millimetres.text(meant) + "?",
                    Optional.of(new Length(meant))));
  }
}
