package org.comparanda.house;

import java.time.Instant;
import org.comparanda.measurement.PersonId;

/**
 * A right that was given to a person or withdrawn. Rows are only ever added.
 *
 * @param id running number in its collection, given by the repository
 * @param by who gave or withdrew it
 * @param reason may be empty
 */
public record Grant(
    long id, PersonId person, Right right, Kind kind, PersonId by, Instant at, String reason) {
  /** Given or withdrawn. */
  public enum Kind {
    GIVEN,
    WITHDRAWN
  }

  /** The same under the number that its repository gave it. */
  public Grant withId(long given) {
    return new Grant(given, person, right, kind, by, at, reason);
  }
}
