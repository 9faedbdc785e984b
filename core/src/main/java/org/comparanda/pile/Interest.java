package org.comparanda.pile;

import java.time.Instant;
import org.comparanda.measurement.PersonId;

/**
 * Research that waits for an arrival; it moves up on the pile.
 *
 * @param arrival its number
 * @param by who asks
 * @param reason what for
 * @param at when it was asked
 */
public record Interest(String arrival, PersonId by, String reason, Instant at) {
  public Interest {
    if (reason.isBlank()) {
      throw new IllegalArgumentException("Research interest needs a reason.");
    }
  }
}
