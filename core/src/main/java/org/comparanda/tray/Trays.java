package org.comparanda.tray;

import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.BoneId;

/** Repository of trays, their bones and the calls on them. */
public interface Trays {
  List<Tray> all();

  void save(Tray tray);

  /** The bones of a tray in the order they were added. */
  List<TrayBone> bonesOf(TrayId tray);

  Optional<TrayBone> bone(BoneId bone);

  /** Adds a bone or replaces what is recorded of it (its readings are not touched). */
  void save(TrayBone bone);

  /** Appends a call and returns it with its id. */
  Call record(Call call);

  /** All calls on a bone, oldest first. */
  List<Call> callsOn(BoneId bone);
}
