package org.comparanda.storage;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;

/** The file of a collection: brought up to date, made, copied; never half of it. */
final class CollectionFile {
  private CollectionFile() {}

  /** The file's tables, brought up to date. Errors: those of {@link Collection#open}. */
  static Database opened(Path place, DayBookRows dayBook) {
    try {
      int form = FileCheck.formOf(place);
      if (form < Schema.VERSION) {
        Schema.bringUpToDate(place);
      }
      Database database = new Database(place);
      if (form < Schema.BOOK_KEEPS_ALL) {
        database.write(
            h -> {
              dayBook.takeOver(h);
              return place;
            });
      }
      if (form < Schema.LOTS_HAVE_NOTES) {
        database.write(
            h -> {
              NotesOfLots.takeOver(h, dayBook);
              return place;
            });
      }
      return database;
    } catch (SQLException problem) {
      throw Database.told(place, problem)
          .orElseGet(() -> CollectionProblem.damaged(place, String.valueOf(problem.getMessage())));
    }
  }

  /**
   * Makes an empty file under another name and then renames it, so that a half-made one never
   * stands there. Errors: those of {@link Collection#create}.
   */
  static void made(Path file) {
    Path place = file.toAbsolutePath();
    if (!place.toString().endsWith(Collection.ENDING)) {
      throw CollectionProblem.wrongName(file);
    }
    if (Files.exists(place)) {
      throw CollectionProblem.exists(file);
    }
    try {
      Path folder = place.resolveSibling("");
      Files.createDirectories(folder);
      Path unfinished = Files.createTempFile(folder, "unfinished", Collection.ENDING);
      try {
        Schema.bringUpToDate(unfinished);
        Files.move(unfinished, place);
      } finally {
        Files.deleteIfExists(unfinished);
      }
    } catch (FileAlreadyExistsException problem) {
      throw CollectionProblem.exists(file);
    } catch (IOException | SQLException problem) {
      throw CollectionProblem.notWritable(file);
    }
  }

  /** Copies the whole file to that place. Errors: those of {@link Collection#backUp}. */
  static void copied(Database database, Path file, Path place, Clock clock) {
    Path copy = place.toAbsolutePath();
    if (Files.exists(copy)) {
      throw CollectionProblem.exists(place);
    }
    try {
      Path room = Files.createTempDirectory(copy.resolveSibling(""), "unfinished");
      Path unfinished = room.resolve("copy" + Collection.ENDING);
      try {
        database.copyTo(unfinished);
        try (Collection copied = Collection.open(unfinished, clock)) {
          if (!copied.contentHash().equals(database.read(ContentHash::of))) {
            throw CollectionProblem.copyDiffers(file);
          }
        }
        Files.move(unfinished, copy);
      } finally {
        Files.deleteIfExists(unfinished);
        Files.deleteIfExists(room);
      }
    } catch (IOException problem) {
      throw CollectionProblem.notWritable(place);
    }
  }
}
