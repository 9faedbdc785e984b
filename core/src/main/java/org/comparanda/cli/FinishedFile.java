package org.comparanda.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
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
    Path folder = place.resolveSibling("");
    if (!Files.isDirectory(folder)) {
      throw refused(file, "there is no folder \"" + folder + "\"");
    }
    if (Files.isDirectory(place)) {
      throw refused(file, "it is a folder");
    }
    Path unfinished;
    try {
      unfinished = Files.createTempFile(folder, "unfinished", ".part");
    } catch (AccessDeniedException closed) {
      throw refused(file, "nothing may be written into \"" + folder + "\"");
    }
    try {
      try (OutputStream out = Files.newOutputStream(unfinished)) {
        writing.to(out);
      }
      Files.move(unfinished, place, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(unfinished);
    }
  }

  private static CannotDo refused(Path file, String why) {
    return new CannotDo("\"" + file + "\" was not written: " + why + ". Choose another place.");
  }
}
