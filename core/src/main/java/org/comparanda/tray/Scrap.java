package org.comparanda.tray;

import java.time.Instant;
import java.util.Optional;
import org.comparanda.measurement.PersonId;

/**
 * Pieces of a tray that nobody will name: counted and weighed.
 *
 * <p>Errors: {@link IllegalArgumentException} if there is no piece or the mass is not above zero.
 *
 * @param id running number in its collection, given by the repository
 * @param grams of all pieces together; empty when not weighed
 */
public record Scrap(
    long id,
    TrayId tray,
    long pieces,
    Optional<Double> grams,
    PersonId person,
    Instant at,
    String remarks) {
  public Scrap {
    if (pieces < 1) {
      throw new IllegalArgumentException("Scrap is at least one piece, not " + pieces + ".");
    }
    grams
        .filter(g -> !(g > 0 && g < Double.POSITIVE_INFINITY))
        .ifPresent(
            g -> {
              throw new IllegalArgumentException("A mass is above zero, not " + g + " g.");
            });
  }

  /** The same under the number that its repository gave it. */
  public Scrap withId(long given) {
    return new Scrap(given, tray, pieces, grams, person, at, remarks);
  }
}
