package org.comparanda.gui.capture;

import java.util.Optional;

/** Small things remembered on this computer, not in the collection: who sat here, which caliper. */
public interface Memory {
  Optional<String> recall(String key);

  void remember(String key, String value);
}
