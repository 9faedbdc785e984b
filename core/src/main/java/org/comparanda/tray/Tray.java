package org.comparanda.tray;

import java.util.Optional;
import org.comparanda.bone.BoneAge;
import org.comparanda.measurement.PersonId;

/**
 * The unsorted bones of one lot on their way through the room.
 *
 * @param id key of the tray
 * @param lot lot that it belongs to
 * @param name name shown
 * @param age how old its bones are
 * @param own what is recorded of this tray alone, beside its lot
 * @param ofLot what is recorded of its lot
 * @param state where it stands on its way
 * @param priority how soon it is wanted
 * @param assignedTo who works on it
 */
public record Tray(
    TrayId id,
    String lot,
    String name,
    BoneAge age,
    LotNotes own,
    LotNotes ofLot,
    State state,
    Priority priority,
    Optional<PersonId> assignedTo) {
  /** Where a tray stands on its way. */
  public enum State {
    WAITING,
    ON_THE_BENCH,
    SECOND_LOOK,
    DONE,
    SET_ASIDE
  }

  /** A tray that nobody asked for and nobody works on yet, of a lot without notes. */
  public Tray(
      TrayId id,
      String lot,
      String name,
      BoneAge age,
      String provenance,
      String hazards,
      State state) {
    this(
        id,
        lot,
        name,
        age,
        new LotNotes(provenance, hazards),
        LotNotes.none(),
        state,
        Priority.ordinary(),
        Optional.empty());
  }

  public Tray withState(State next) {
    return new Tray(id, lot, name, age, own, ofLot, next, priority, assignedTo);
  }

  public Tray withPriority(Priority next) {
    return new Tray(id, lot, name, age, own, ofLot, state, next, assignedTo);
  }

  /** With what is recorded of this tray alone. */
  public Tray withOwn(LotNotes next) {
    return new Tray(id, lot, name, age, next, ofLot, state, priority, assignedTo);
  }

  /** With what is recorded of its lot; a repository keeps that with the lot. */
  public Tray withOfLot(LotNotes next) {
    return new Tray(id, lot, name, age, own, next, state, priority, assignedTo);
  }

  /** Where its bones were found, as recorded of the lot and of the tray; empty when it isn't. */
  public String provenance() {
    return ofLot.with(own).provenance();
  }

  /** What is dangerous about its bones, by the lot and by the tray; empty when nothing is known. */
  public String hazards() {
    return ofLot.with(own).hazards();
  }

  /** The same tray, worked on by this person; by nobody when empty. */
  public Tray withAssignedTo(Optional<PersonId> person) {
    return new Tray(id, lot, name, age, own, ofLot, state, priority, person);
  }
}
