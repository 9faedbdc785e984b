package org.comparanda.tray;

import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.BoneId;

/** Repository of bones in pieces. */
public interface Refits {
  List<Refit> all();

  Optional<Refit> of(BoneId bone);

  /** Adds it or replaces what was recorded of the same bone. */
  void save(Refit refit);
}
