package org.comparanda.tray;

import java.time.Instant;
import java.util.Optional;
import org.comparanda.measurement.BoneId;

/**
 * What the numbers said of a bone, kept whole so that it can be reckoned again. Never changed;
 * wiped when the bone may be human.
 *
 * @param id running number in its collection, given by the repository
 * @param call the call beside which it was seen; empty where it was kept without one
 * @param program which program said it, and its version
 * @param shelfVersion hash of the shelf that was asked
 * @param content readings, rules and the full answer, as JSON
 */
public record KeptAnswer(
    long id,
    BoneId bone,
    Instant at,
    Optional<Long> call,
    String program,
    String shelfVersion,
    String content) {
  /** One that was kept without a call. */
  public static KeptAnswer withoutCall(
      BoneId bone, Instant at, String program, String shelfVersion, String content) {
    return new KeptAnswer(0, bone, at, Optional.empty(), program, shelfVersion, content);
  }

  /** The same under the number that its repository gave it. */
  public KeptAnswer withId(long given) {
    return new KeptAnswer(given, bone, at, call, program, shelfVersion, content);
  }
}
