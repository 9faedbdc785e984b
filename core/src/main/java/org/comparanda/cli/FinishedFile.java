package org.comparanda.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file beside its place and renames it, so that no half of it ever stands there. */
final class FinishedFile {
  private FinishedFile() {}

  /** Writes all bytes of the file. */
  interface Writing {
    void to(OutputStream out) throws IOException;
  }

  static void write(Path file, Writing writing) throws IOException {
    Path place = file.toAbsolutePath();
    Path unfinished = Files.createTempFile(place.resolveSibling(""), "unfinished", ".part");
    try {
      try (OutputStream out = Files.newOutputStream(unfinished)) {
        writing.to(out);
      }
      Files.move(unfinished, place, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(unfinished);
    }
  }
}
