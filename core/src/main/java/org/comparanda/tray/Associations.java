package org.comparanda.tray;

import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.BoneId;

/** Repository of associations. A bone is in one at most. */
public interface Associations {
  /** All of them, by number. */
  List<Association> all();

  /** The bones found together with this one, itself among them; empty where it was found alone. */
  Optional<Association> of(BoneId bone);

  /** Says that two bones were found together; what either was in becomes one. */
  Association join(BoneId one, BoneId other);

  /** Takes a bone out of its association; one that is left alone is in none. */
  void part(BoneId bone);
}
