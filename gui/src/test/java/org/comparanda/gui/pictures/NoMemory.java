package org.comparanda.gui.pictures;

import java.util.Optional;
import org.comparanda.gui.capture.Memory;

/** A computer on which nobody worked before. */
record NoMemory() implements Memory {
  @Override
  public Optional<String> recall(String key) {
    return Optional.empty();
  }

  @Override
  public void remember(String key, String value) {}
}
