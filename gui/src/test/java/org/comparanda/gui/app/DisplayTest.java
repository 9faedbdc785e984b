package org.comparanda.gui.app;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;

class DisplayTest {
  @Test
  void linuxWithoutDisplayHasNone() {
    assertFalse(Display.present(Map.of("os.name", "Linux"), Map.of()));
    assertFalse(Display.present(Map.of("os.name", "Linux"), Map.of("DISPLAY", "")));
    assertTrue(Display.present(Map.of("os.name", "Linux"), Map.of("DISPLAY", ":0")));
  }

  @Test
  void otherSystemsAlwaysHaveOne() {
    assertTrue(Display.present(Map.of("os.name", "Windows 11"), Map.of()));
    assertTrue(Display.present(Map.of("os.name", "Mac OS X"), Map.of()));
  }
}
