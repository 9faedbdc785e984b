package org.comparanda.measurement;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;
import org.comparanda.bone.ElementKey;

/**
 * One caliper value, never overwritten: a correction or a withdrawal is a new reading that points
 * at the old one.
 *
 * @param id running number in its collection, given by the log
 * @param bone the bone measured
 * @param element as which element it was measured (a code means another thing on another element)
 * @param code what was measured
 * @param kind a take, a correction of one, a withdrawal of one, or "not possible"
 * @param asTyped the text exactly as typed, unit included
 * @param length the length it stands for; empty for a withdrawal and for "not possible"
 * @param person who
 * @param at when
 * @param pass 1, 2 or 3
 * @param repeat whether it was taken back to back (left out of error figures)
 * @param instrument the caliper card, empty when typed by hand
 * @param pointsAt the reading that this one corrects or withdraws
 * @param reason why not possible, or why withdrawn; may be empty
 */
public record Reading(
    long id,
    BoneId bone,
    ElementKey element,
    MeasurementCode code,
    Kind kind,
    String asTyped,
    Optional<Length> length,
    PersonId person,
    Instant at,
    int pass,
    boolean repeat,
    Optional<String> instrument,
    Optional<Long> pointsAt,
    String reason) {

  /**
   * A first-pass take of a value that came from a table: not yet in a log, no caliper.
   *
   * @param mm the value, mm; it counts as typed in mm
   * @param note where it came from; may be empty
   */
  public static Reading ofTable(
      BoneId bone,
      ElementKey element,
      MeasurementCode code,
      double mm,
      PersonId person,
      Instant at,
      String note) {
    return new Reading(
        0,
        bone,
        element,
        code,
        Kind.TAKE,
        BigDecimal.valueOf(mm).toPlainString() + " mm",
        Optional.of(new Length(mm)),
        person,
        at,
        1,
        false,
        Optional.empty(),
        Optional.empty(),
        note);
  }

  /** The same reading under the number that its log gave it. */
  public Reading withId(long given) {
    return new Reading(
        given,
        bone,
        element,
        code,
        kind,
        asTyped,
        length,
        person,
        at,
        pass,
        repeat,
        instrument,
        pointsAt,
        reason);
  }

  /** What a reading row says. */
  public enum Kind {
    TAKE,
    CORRECTION,
    WITHDRAWAL,
    NOT_POSSIBLE
  }
}
