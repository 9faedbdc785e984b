package org.comparanda.storage;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;

/** Looks at a file before it is opened, and changes nothing in it. */
final class FileCheck {
  private static final String SQLITE_MARK = "SQLite format 3\0";
  private static final int APPLICATION_ID_AT = 68; // SQLite file format, section 1.3

  private FileCheck() {}

  /**
   * The form (schema version) of a collection's file.
   *
   * <p>Errors: {@link CollectionProblem} if the file is missing, not ours, newer than we know,
   * locked or damaged.
   */
  static int formOf(Path file) {
    if (!Files.isRegularFile(file)) {
      throw Files.exists(file)
          ? CollectionProblem.foreign(file, "it is a folder")
          : CollectionProblem.missing(file);
    }
    requireOurMark(file);
    try (Connection looking = SqliteConnections.looking(file)) {
      int form = Integer.parseInt(DurabilitySettings.pragma(looking, "user_version"));
      if (form > Schema.VERSION) {
        throw CollectionProblem.newer(file, form, Schema.VERSION);
      }
      String found = DurabilitySettings.pragma(looking, "quick_check(1)");
      if (!found.equals("ok")) {
        throw CollectionProblem.damaged(file, found.strip().replaceAll("\\s+", " "));
      }
      return form;
    } catch (SQLException problem) {
      throw Database.told(file, problem)
          .orElseGet(() -> CollectionProblem.damaged(file, String.valueOf(problem.getMessage())));
    }
  }

  private static void requireOurMark(Path file) {
    byte[] mark = new byte[SQLITE_MARK.length()];
    int applicationId;
    try (InputStream bytes = Files.newInputStream(file);
        DataInputStream header = new DataInputStream(bytes)) {
      if (Files.size(file) == 0) {
        throw CollectionProblem.foreign(file, "it is empty");
      }
      if (Files.size(file) < APPLICATION_ID_AT + Integer.BYTES) {
        throw CollectionProblem.foreign(file, "it is too short");
      }
      header.readFully(mark);
      header.skipNBytes(APPLICATION_ID_AT - mark.length);
      applicationId = header.readInt();
    } catch (IOException problem) {
      throw CollectionProblem.notReadable(file);
    }
    if (!new String(mark, StandardCharsets.ISO_8859_1).equals(SQLITE_MARK)) {
      throw CollectionProblem.foreign(file, "it is another kind of file");
    }
    if (applicationId != Schema.APPLICATION_ID) {
      throw CollectionProblem.foreign(file, "it is another program's database");
    }
  }
}
