package org.comparanda.tray;

import org.comparanda.bone.BoneAge;

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
 */
public record Tray(
    TrayId id,
    String lot,
    String name,
    BoneAge age,
    String provenance,
    String hazards,
    State state) {
  /** Where a tray stands on its way. */
  public enum State {
    WAITING,
    ON_THE_BENCH,
    SECOND_LOOK,
    DONE,
    SET_ASIDE
  }
}
