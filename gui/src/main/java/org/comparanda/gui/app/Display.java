package org.comparanda.gui.app;

import java.util.Locale;
import java.util.Map;

/** Whether a window can open here. */
final class Display {
  private Display() {}

  /**
   * False on Linux and other Unix without {@code DISPLAY} (JavaFX opens its windows through X11,
   * under Wayland too); true on Windows, on a Mac, and where a toolkit without screen was chosen.
   */
  static boolean present(Map<String, String> properties, Map<String, String> environment) {
    String system = properties.getOrDefault("os.name", "").toLowerCase(Locale.ROOT);
    return system.startsWith("windows")
        || system.startsWith("mac")
        || properties.containsKey("glass.platform")
        || !environment.getOrDefault("DISPLAY", "").isBlank();
  }
}
