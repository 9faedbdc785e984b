package org.comparanda.register;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.comparanda.statistics.Outcome;

/**
 * A kind of body measure.
 *
 * @param kept the unit it is kept in
 * @param units how many kept units each unit that may be typed is
 */
record Amount(String kept, Map<String, Double> units) {
  static final Amount LENGTH =
      new Amount("mm", Map.of("mm", 1.0, "cm", 10.0, "m", 1000.0, "in", 25.4));
  static final Amount MASS = new Amount("g", Map.of("g", 1.0, "kg", 1000.0, "t", 1_000_000.0));

  Amount {
    units = Map.copyOf(units);
  }

  /** Empty for an empty text; without a unit it is mm or g. */
  Outcome<Optional<Double>> read(String text) {
    if (text.isEmpty()) {
      return Outcome.of(Optional.empty());
    }
    String number = text.replaceAll("[\\sA-Za-z]+$", "");
    String unit = text.substring(number.length()).strip();
    Optional<Double> value = PlainNumber.read(number);
    Optional<Double> times = Optional.ofNullable(units.get(unit.isEmpty() ? kept : unit));
    if (value.isEmpty() || times.isEmpty()) {
      return Outcome.none(
          "is no number above zero with a unit.",
          "Write for example 12.5 "
              + kept
              + "; units: "
              + units.keySet().stream().sorted().collect(Collectors.joining(", "))
              + ". A comma before three digits could mean thousands: use a point.");
    }
    return Outcome.of(Optional.of(value.get() * times.get()));
  }
}
