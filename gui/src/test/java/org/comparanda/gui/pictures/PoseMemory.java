package org.comparanda.gui.pictures;

import java.util.Optional;
import org.comparanda.gui.capture.Memory;

/** A computer on which hints were read, unless the pose is about hints. */
record PoseMemory(Pose pose) implements Memory {
  @Override
  public Optional<String> recall(String key) {
    boolean read = key.startsWith("hint.") && !pose.state().startsWith("hint");
    return read ? Optional.of("read") : Optional.empty();
  }

  @Override
  public void remember(String key, String value) {}
}
