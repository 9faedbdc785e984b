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
 * @param provenance as recorded
 * @param hazards shown before its first bone; empty when none is known
 * @param state where it stands on its way
 * @param priority how soon it is wanted
 * @param assignedTo who works on it
 */
public record Tray(
    TrayId id,
    String lot,
    String name,
    BoneAge age,
    String provenance,
    String hazards,
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

  /** A tray that nobody asked for and nobody works on yet. */
  public Tray(
      TrayId id,
      String lot,
      String name,
      BoneAge age,
      String provenance,
      String hazards,
      State state) {
    this(id, lot, name, age, provenance, hazards, state, Priority.ordinary(), Optional.empty());
  }

  public Tray withState(State next) {
    return new Tray(id, lot, name, age, provenance, hazards, next, priority, assignedTo);
  }

  public Tray withPriority(Priority next) {
    return new Tray(id, lot, name, age, provenance, hazards, state, next, assignedTo);
  }

  public Tray withHazards(String next) {
    return new Tray(id, lot, name, age, provenance, next, state, priority, assignedTo);
  }

  /** The same tray, worked on by this person; by nobody when empty. */
  public Tray withAssignedTo(Optional<PersonId> person) {
    return new Tray(id, lot, name, age, provenance, hazards, state, priority, person);
  }
}
