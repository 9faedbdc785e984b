package org.comparanda.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/** Copies outside data to a folder, so that a command can be given a file. */
final class OutsideFile {
  private OutsideFile() {}

  /** Of {@code outside/data/}. */
  static Path copied(Path folder, String name) {
    try (InputStream in =
        Objects.requireNonNull(
            OutsideFile.class.getResourceAsStream("/outside/data/" + name), name)) {
      Path file = folder.resolve(name);
      Files.copy(in, file);
      return file;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
