package org.comparanda.tray;

import java.time.Instant;
import java.util.List;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.statistics.Outcome;

/** Repository of bones set aside as possibly human. */
public interface Stops {
  /** What was said of this bone, oldest first. */
  List<Stop> of(BoneId bone);

  /**
   * Locks the bone at once, for everyone: whatever was computed of it or lies half-typed is wiped
   * with it. Not possible for a bone that is on no tray.
   */
  Outcome<Stop> setAside(BoneId bone, PersonId person, Instant at, String reason);

  /** Opens it again: by a person with that right, with a reason; else says why not. */
  Outcome<Stop> openAgain(BoneId bone, PersonId person, Instant at, String reason);
}
