package org.comparanda.capture.warning;

import java.util.Optional;

/** The value lies outside what any animal on the shelf shows for the element. */
record OutsideTheShelf() implements EntryCheck {
  @Override
  public Optional<Warning> check(Entry entry) {
    return entry
        .rangeMissed()
        .map(
            range ->
                Warning.of(
                    Millimetres.text(entry.mm())
                        + " is outside what any animal on the shelf shows for "
                        + entry.code()
                        + " ("
                        + Millimetres.text(range.lowMm())
                        + " to "
                        + Millimetres.text(range.highMm())
                        + ")."));
  }
}
