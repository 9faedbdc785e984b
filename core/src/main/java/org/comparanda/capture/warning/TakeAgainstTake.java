package org.comparanda.capture.warning;

import java.util.Optional;

/**
 * The value differs from an earlier take by more than the protocol allows. The earlier take is
 * hidden in a later pass, so the sentence doesn't tell it.
 */
record TakeAgainstTake() implements EntryCheck {
  @Override
  public Optional<Warning> check(Entry entry) {
    double tolerance = entry.measurement().tolerance();
    return entry.takesMm().stream()
        .filter(mm -> Math.abs(mm - entry.mm()) > tolerance * (mm + entry.mm()) / 2)
        .findFirst()
        .map(
            mm ->
                Warning.of(
                    "This take differs from an earlier one by more than the tolerance: look where"
                        + " the jaws stand; if it is right, a third take follows."));
  }
}
