package org.comparanda.capture.warning;

import java.util.Locale;
import java.util.Optional;

/** The value differs from the other side's by more than the sides of one animal do. */
record SidesApart() implements EntryCheck {
  @Override
  public Optional<Warning> check(Entry entry) {
    return entry
        .beside()
        .filter(other -> other.tolerance().exceeds(other.mm(), entry.mm()))
        .map(
            other ->
                Warning.of(
                    "The "
                        + other.side().name().toLowerCase(Locale.ROOT)
                        + " side has "
                        + Millimetres.text(other.mm())
                        + ": left and right of one animal seldom differ by more than "
                        + Math.round(100 * other.tolerance().part())
                        + " %. Are both of the same animal, and do the jaws stand alike?"));
  }
}
