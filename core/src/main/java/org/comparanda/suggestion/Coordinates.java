package org.comparanda.suggestion;

import java.util.Optional;
import org.comparanda.statistics.discriminant.WithoutSize;

/** How the values of a set become the numbers that are compared: as they are, or without size. */
final class Coordinates {
  private static final int FEWEST_PROPORTIONS = 3;

  private final int measurements;
  private final Optional<WithoutSize> proportions;

  private Coordinates(int measurements, Optional<WithoutSize> proportions) {
    this.measurements = measurements;
    this.proportions = proportions;
  }

  /** For so many measurements, which must be possible on the scale. */
  static Coordinates on(Scale scale, int measurements) {
    return new Coordinates(
        measurements,
        scale == Scale.PROPORTIONS
            ? WithoutSize.proportions(measurements).value()
            : Optional.empty());
  }

  /** Measurements needed on a scale. */
  static int fewest(Scale scale) {
    return scale == Scale.PROPORTIONS ? FEWEST_PROPORTIONS : 1;
  }

  static boolean possible(Scale scale, int measurements) {
    return measurements >= fewest(scale);
  }

  double[] of(double... values) {
    return proportions.map(p -> p.row(values)).orElseGet(values::clone);
  }

  /** Numbers compared. */
  int count() {
    return proportions.isPresent() ? measurements - 1 : measurements;
  }
}
