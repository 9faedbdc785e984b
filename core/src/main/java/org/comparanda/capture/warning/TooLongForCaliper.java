package org.comparanda.capture.warning;

import java.util.Optional;
import org.comparanda.capture.CaliperCard;

/** The value is longer than the jaws of the caliper in hand open. */
record TooLongForCaliper() implements EntryCheck {
  @Override
  public Optional<Warning> check(Entry entry) {
    return entry
        .card()
        .flatMap(CaliperCard::reach)
        .filter(reach -> entry.value().length().compareTo(reach) > 0)
        .map(
            reach ->
                Warning.of(
                    "The caliper in hand opens to "
                        + Millimetres.text(reach.mm())
                        + "; take a longer one or the measuring board."));
  }
}
