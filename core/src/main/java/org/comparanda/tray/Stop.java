package org.comparanda.tray;

import java.time.Instant;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;

/**
 * A bone was set aside as possibly human, or opened again. Rows are only ever added.
 *
 * @param id running number in its collection, given by the repository
 * @param reason needed to open it again
 */
public record Stop(long id, BoneId bone, Kind kind, PersonId person, Instant at, String reason) {
  /** Set aside or opened again. */
  public enum Kind {
    SET_ASIDE,
    OPENED
  }
}
