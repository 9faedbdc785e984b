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
    return rows(path, TableOptions.withDefaults(), sheet, progress, problems);
  }

  /** The same of a table whose header may stand below a title. */
  static Optional<RowSource> rows(
      Path path, TableOptions options, ReadingProgress progress, ProblemList problems)
      throws IOException {
    return rows(path, options, options.sheet(), progress, problems);
  }

  private static Optional<RowSource> rows(
      Path path,
      TableOptions options,
      Optional<String> sheet,
      ReadingProgress progress,
      ProblemList problems)
      throws IOException {
    try {
      long headerRow = options.rowOfHeader();
      if (!Files.isDirectory(path) && SpreadsheetFile.is(path)) {
        return new SpreadsheetFile(path).rows(sheet, headerRow, progress, problems);
      }
      Separator separator = new TextCheck(path).separator(headerRow, problems);
      return problems.isEmpty()
          ? Optional.of(new CsvRows(path, separator, headerRow, progress))
          : Optional.empty();
    } catch (NoSuchFileException missing) {
      problems.file("there is no such file", "Check the name and the folder.");
      return Optional.empty();
    }
  }
}
