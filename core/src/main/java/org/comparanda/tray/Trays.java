package org.comparanda.tray;

import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Reading;

/** Repository of trays, their bones and the calls on them. */
public interface Trays {
  List<Tray> all();

  void save(Tray tray);

  /** The bones of a tray in the order they were added. */
  List<TrayBone> bonesOf(TrayId tray);

  Optional<TrayBone> bone(BoneId bone);

  /**
   * Adds a bone or replaces what is recorded of it (its readings are not touched). One that is set
   * aside as possibly human stays so: {@link Stops} alone open it again.
   */
  default void save(TrayBone bone) {
    saveAll(List.of(bone));
  }

  /** The same for several bones: all of them, or none. */
  void saveAll(List<TrayBone> bones);

  /** Puts a tray, its new bones and their readings into the room: all of it, or nothing. */
  void put(Tray tray, List<TrayBone> bones, List<Reading> readings);

  /** Appends a call beside which nothing was computed, and returns it with its id. */
  default Call record(Call call) {
    return record(call, Beside.nothing());
  }

  /** Appends a call with what the numbers said beside it, and returns it with its id. */
  Call record(Call call, Beside beside);

  /** All rows of calls on a bone, oldest first, second looks and withdrawals included. */
  List<Call> callsOn(BoneId bone);

  /** All rows of calls of the whole collection, oldest first. */
  List<Call> calls();

  /** What the numbers said beside a call; nothing where it wasn't kept or was wiped. */
  Beside beside(Call call);

  /**
   * Appends a call on the element, which from then on is what the bone is said to be, unless it
   * belongs to a second look.
   */
  ElementCall record(ElementCall call);

  /** All calls on the element of a bone, oldest first. */
  List<ElementCall> elementCallsOn(BoneId bone);
}
