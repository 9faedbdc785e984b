package org.comparanda.exchange.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/** Looks at the beginning of one file, before anything of it is read. */
final class TablePreviewing {
  private final Path path;
  private final String file;
  private final TableOptions options;
  private final KnownWords known;
  private final Map<String, List<String>> words;
  private final ReadingProgress progress;

  /** With other words for columns, by what they mean. */
  TablePreviewing(
      Path path,
      TableOptions options,
      KnownWords known,
      Map<String, List<String>> words,
      ReadingProgress progress) {
    this.path = path;
    this.options = options;
    this.known = known;
    this.words = words;
    this.progress = progress;
    file = String.valueOf(path.getFileName());
  }

  TableOutcome<TablePreview> preview() {
    ProblemList problems = new ProblemList(file);
    try {
      Optional<RowSource> source = TableOpening.rows(path, options, progress, problems);
      if (source.isPresent()) {
        return preview(source.get(), problems);
      }
    } catch (IOException unreadable) {
      problems.file("the file can't be read", "Check that you may read it.");
    }
    return new TableRefused<>(problems.report());
  }

  private TableOutcome<TablePreview> preview(RowSource source, ProblemList problems)
      throws IOException {
    long headerRow = options.rowOfHeader();
    List<String> header = source.header();
    Optional<TitleRows> title = TitleRows.above(source, header, options, known, words);
    RowSource rows = source;
    if (title.isPresent()) {
      headerRow = title.get().headerRow();
      rows = source.from(headerRow);
      header = rows.header();
    }
    if (header.isEmpty()) {
      problems.file("there is no header row", "Save the table again, with a header row.");
      return new TableRefused<>(problems.report());
    }
    TableOptions.Shape shape = shape(header);
    List<ColumnGuess> guesses = new ColumnGuesses(known, words, shape).of(header);
    return new TableRead<>(
        new TablePreview(
            rows.layout(), headerRow, title.isPresent(), guesses, firstRows(rows), roles(shape)),
        known.protocol(),
        TableFacts.notRead(file, rows.layout()));
  }

  private TableOptions.Shape shape(List<String> header) {
    if (options.shape() != TableOptions.Shape.BY_HEADER) {
      return options.shape();
    }
    List<String> longRoles =
        new ColumnGuesses(known, words, TableOptions.Shape.LONG)
            .of(header).stream().flatMap(g -> g.role().stream()).toList();
    return longRoles.containsAll(List.of("measurement", "value"))
        ? TableOptions.Shape.LONG
        : TableOptions.Shape.WIDE;
  }

  /** All that a column may be. */
  private List<String> roles(TableOptions.Shape shape) {
    boolean tall = shape == TableOptions.Shape.LONG;
    List<String> roles = new ArrayList<>();
    for (ReservedColumn column : ReservedColumn.values()) {
      if (tall || !column.ofLongTables()) {
        roles.add(column.header());
      }
    }
    if (!tall) {
      known.codeNames().stream().distinct().forEach(roles::add);
    }
    return roles;
  }

  /** Only the first rows are wanted; the rest of the file is not read. */
  private List<List<String>> firstRows(RowSource rows) throws IOException {
    List<List<String>> first = new ArrayList<>();
    ReadingProgress enough =
        new ReadingProgress() {
          @Override
          public void read(long bytes, long ofBytes) {}

          @Override
          public boolean cancelled() {
            return first.size() >= TablePreview.ROWS || progress.cancelled();
          }
        };
    try {
      rows.watchedBy(enough)
          .eachRow(
              new ProblemList(file),
              (number, cells) -> first.add(cells.stream().map(Cell::text).toList()));
    } catch (CancellationException hadEnough) {
      if (progress.cancelled()) {
        throw hadEnough;
      }
    }
    return first;
  }
}
