package org.comparanda.capture.warning;

import java.util.Optional;

/** The value is the one that the neighbouring field holds already, to the hundredth of a mm. */
record NeighbourValue() implements EntryCheck {
  private static final double HALF_A_HUNDREDTH_MM = 0.005;

  @Override
  public Optional<Warning> check(Entry entry) {
    return entry.neighbours().stream()
        .filter(
            code ->
                Optional.ofNullable(entry.others().get(code))
                    .filter(mm -> Math.abs(mm - entry.mm()) < HALF_A_HUNDREDTH_MM)
                    .isPresent())
        .findFirst()
        .map(code -> Warning.of("This is the value of " + code + ", the field beside this one."));
  }
}
