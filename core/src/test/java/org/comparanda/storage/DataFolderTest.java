package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DataFolderTest {
  // XDG Base Directory Specification 0.8: XDG_DATA_HOME, default $HOME/.local/share, must be
  // absolute or be ignored (from memory). Windows and Mac: common practice, no source.
  @Test
  void linuxFollowsTheBaseDirectorySpecification() {
    Map<String, String> linux = Map.of("os.name", "Linux", "user.home", "/home/vera");
    assertEquals(Path.of("/home/vera/.local/share/comparanda"), DataFolder.of(linux, Map.of()));
    assertEquals(
        Path.of("/data/comparanda"), DataFolder.of(linux, Map.of("XDG_DATA_HOME", "/data")));
    assertEquals(
        Path.of("/home/vera/.local/share/comparanda"),
        DataFolder.of(linux, Map.of("XDG_DATA_HOME", "relative")));
  }

  @Test
  void macKeepsItInTheLibrary() {
    assertEquals(
        Path.of("/Users/vera/Library/Application Support/Comparanda"),
        DataFolder.of(Map.of("os.name", "Mac OS X", "user.home", "/Users/vera"), Map.of()));
  }

  @Test
  void thePropertyOverridesAll() {
    assertEquals(
        Path.of("elsewhere"),
        DataFolder.of(
            Map.of("comparanda.data", "elsewhere", "os.name", "Linux"),
            Map.of("XDG_DATA_HOME", "/data")));
  }
}
