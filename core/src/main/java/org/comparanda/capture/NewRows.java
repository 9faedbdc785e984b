package org.comparanda.capture;

import java.util.List;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.Reading;

/**
 * Writes the rows that a step appends. Nothing is overwritten: a correction points at the row that
 * it replaces, a withdrawal at the one that it takes back.
 *
 * @param beside what becomes of a row that counts already at the same place
 */
record NewRows(BoneId bone, ElementKey element, Takes takes, Beside beside, Hand hand) {
  /** What becomes of a row that counts already. */
  enum Beside {
    KEPT,
    REPLACED
  }

  Reading take(Place place, String typed, Length length, String reason) {
    Optional<Long> old = replaced(place);
    Reading.Kind kind = old.isPresent() ? Reading.Kind.CORRECTION : Reading.Kind.TAKE;
    return row(place, kind, typed, Optional.of(length), old, reason);
  }

  Reading notPossible(Place place, NotPossible reason) {
    return row(
        place, Reading.Kind.NOT_POSSIBLE, "", Optional.empty(), replaced(place), reason.name());
  }

  Reading withdrawal(Reading last) {
    return row(
        new Place(last.code(), last.pass()),
        Reading.Kind.WITHDRAWAL,
        "",
        Optional.empty(),
        Optional.of(last.id()),
        "undo");
  }

  private Optional<Long> replaced(Place place) {
    List<Reading> there = takes.at(place);
    return beside == Beside.KEPT || there.isEmpty()
        ? Optional.empty()
        : Optional.of(there.get(there.size() - 1).id());
  }

  private Reading row(
      Place place,
      Reading.Kind kind,
      String typed,
      Optional<Length> length,
      Optional<Long> pointsAt,
      String reason) {
    boolean repeat =
        kind == Reading.Kind.TAKE && takes.at(place).stream().anyMatch(r -> r.length().isPresent());
    return new Reading(
        0,
        bone,
        element,
        place.code(),
        kind,
        typed,
        length,
        hand.person(),
        hand.at(),
        place.pass(),
        repeat,
        hand.card(),
        pointsAt,
        reason);
  }
}
