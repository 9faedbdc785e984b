package org.comparanda.exchange.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Finds out what kind of file a table stands in, by its first bytes, and how its rows are read. */
final class TableOpening {
  private TableOpening() {}

  /** The rows, or none and the problem why. */
  static Optional<RowSource> rows(
      Path path, Optional<String> sheet, ReadingProgress progress, ProblemList problems)
      throws IOException {
    try {
      if (!Files.isDirectory(path) && SpreadsheetFile.is(path)) {
        return new SpreadsheetFile(path).rows(sheet, progress, problems);
      }
      Separator separator = new TextCheck(path).separator(problems);
      return problems.isEmpty()
          ? Optional.of(new CsvRows(path, separator, progress))
          : Optional.empty();
    } catch (NoSuchFileException missing) {
      problems.file("there is no such file", "Check the name and the folder.");
      return Optional.empty();
    }
  }
}
