package org.comparanda.exchange.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Compares a text with a file kept in the project; {@code -Dgolden.write=true} writes it anew. */
final class GoldenFile {
  private static final Path FOLDER = Path.of("src", "test", "resources", "golden", "json");

  private GoldenFile() {}

  static void equal(String name, String text) throws IOException {
    Path file = FOLDER.resolve(name);
    if (Boolean.getBoolean("golden.write")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, text);
    }
    assertEquals(Files.readString(file), text);
  }
}
