package org.comparanda.tray;

import java.time.Instant;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;

/**
 * A person's word on which element, side and portion a bone is. History is kept; the latest holds.
 *
 * @param id running number in its collection, given by the repository
 * @param look number of the second look that it belongs to; such a word stands beside the first and
 *     replaces nothing
 */
public record ElementCall(
    long id,
    BoneId bone,
    ElementKey element,
    Side side,
    Portion portion,
    PersonId person,
    Instant at,
    String basis,
    Optional<Long> look) {
  /** An ordinary word, which holds from then on. */
  public ElementCall(
      long id,
      BoneId bone,
      ElementKey element,
      Side side,
      Portion portion,
      PersonId person,
      Instant at,
      String basis) {
    this(id, bone, element, side, portion, person, at, basis, Optional.empty());
  }

  /** The same under the number that its repository gave it. */
  public ElementCall withId(long given) {
    return new ElementCall(given, bone, element, side, portion, person, at, basis, look);
  }

  /** The same as a part of a second look. */
  public ElementCall ofLook(long call) {
    return new ElementCall(id, bone, element, side, portion, person, at, basis, Optional.of(call));
  }
}
