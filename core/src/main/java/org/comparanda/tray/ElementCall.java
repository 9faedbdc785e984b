package org.comparanda.tray;

import java.time.Instant;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;

/**
 * A person's word on which element, side and portion a bone is. History is kept; the latest holds.
 *
 * @param id running number in its collection, given by the repository
 */
public record ElementCall(
    long id,
    BoneId bone,
    ElementKey element,
    Side side,
    Portion portion,
    PersonId person,
    Instant at,
    String basis) {
  /** The same under the number that its repository gave it. */
  public ElementCall withId(long given) {
    return new ElementCall(given, bone, element, side, portion, person, at, basis);
  }
}
