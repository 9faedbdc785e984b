package org.comparanda.exchange.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/** The rows of one sheet of a workbook, streamed. Formulas count with the value last computed. */
final class SheetRows implements RowSource {
  private static final int TELL_EVERY = 1_000;

  private final Path path;
  private final String sheet;
  private final WorkbookCheck.Seen seen;
  private final long headerRow;
  private final ReadingProgress progress;

  SheetRows(
      Path path, String sheet, WorkbookCheck.Seen seen, long headerRow, ReadingProgress progress) {
    this.path = path;
    this.sheet = sheet;
    this.seen = seen;
    this.headerRow = headerRow;
    this.progress = progress;
  }

  static ReadableWorkbook open(Path path) throws IOException {
    return new ReadableWorkbook(path.toFile(), new ReadingOptions(true, true));
  }

  @Override
  public String layout() {
    return "sheet \""
        + sheet
        + "\""
        + (seen.merged() == 0
            ? ""
            : " (the file has merged cells; only the first cell of each holds its value)");
  }

  @Override
  public RowSource watchedBy(ReadingProgress other) {
    return new SheetRows(path, sheet, seen, headerRow, other);
  }

  @Override
  public RowSource from(long row) {
    return new SheetRows(path, sheet, seen, row, progress);
  }

  @Override
  public List<SortedMap<Long, List<String>>> tops(int most) throws IOException {
    SortedMap<Long, List<String>> top = new TreeMap<>();
    each(
        new ProblemList(sheet),
        (row, cells) -> {
          top.put(row, cells.stream().map(Cell::text).toList());
          return top.size() < most;
        });
    return List.of(top);
  }

  @Override
  public List<String> header() throws IOException {
    List<String> header = new ArrayList<>();
    each(
        new ProblemList(sheet),
        (row, cells) -> {
          if (row >= headerRow) {
            cells.forEach(cell -> header.add(cell.text()));
          }
          return row < headerRow;
        });
    while (!header.isEmpty() && header.get(header.size() - 1).isEmpty()) {
      header.remove(header.size() - 1);
    }
    return header;
  }

  @Override
  public void eachRow(ProblemList problems, RowVisitor visitor) throws IOException {
    List<String> header = header();
    Map<String, String> letters = new HashMap<>();
    for (int i = header.size() - 1; i >= 0; i--) {
      letters.put(header.get(i), letters(i));
    }
    problems.letters(letters);
    boolean[] below = {false};
    each(
        problems,
        (number, cells) -> {
          if (below[0]) {
            asLongAsHeader(number, cells, header.size(), problems)
                .ifPresent(row -> visitor.row(number, row));
          }
          below[0] = below[0] || number >= headerRow;
          return true;
        });
  }

  /** Empty cells at the end of a row are not in the file; cells beyond the header are too many. */
  private static Optional<List<Cell>> asLongAsHeader(
      long number, List<Cell> cells, int columns, ProblemList problems) {
    for (int i = columns; i < cells.size(); i++) {
      if (!cells.get(i).text().isEmpty()) {
        problems.row(
            number,
            "cell "
                + letters(i)
                + number
                + " stands beyond the header (\""
                + cells.get(i).text()
                + "\")",
            "Head that column, or take the cell out.");
        return Optional.empty();
      }
    }
    List<Cell> row = new ArrayList<>(cells.subList(0, Math.min(columns, cells.size())));
    while (row.size() < columns) {
      row.add(Cell.EMPTY);
    }
    return Optional.of(row);
  }

  /** Takes a row that is not blank; says whether to go on. */
  private interface Taker {
    boolean take(long number, List<Cell> cells);
  }

  private void each(ProblemList problems, Taker taker) throws IOException {
    long size = Files.size(path);
    long done = 0;
    try (ReadableWorkbook book = open(path)) {
      Sheet read = book.findSheet(sheet).orElseThrow();
      try (Stream<Row> stream = read.openStream()) {
        Iterator<Row> rows = stream.iterator();
        boolean more = true;
        while (more && rows.hasNext()) {
          Row row = rows.next();
          RowSource.goOnOrStop(progress, path);
          if (++done % TELL_EVERY == 0 || done == seen.rows()) {
            progress.read(size * Math.min(done, seen.rows()) / Math.max(1, seen.rows()), size);
          }
          List<Cell> cells = SheetCell.all(row);
          if (cells.stream().anyMatch(c -> !c.text().isEmpty())) {
            more = taker.take(row.getRowNum(), cells);
          }
        }
      }
    } catch (org.dhatim.fastexcel.reader.ExcelReaderException broken) {
      problems.file(
          "the spreadsheet is damaged (" + broken.getMessage() + ")",
          "Open it in the program that made it and save it again, or save it as CSV (UTF-8).");
    }
  }

  static boolean blank(Row row) {
    return SheetCell.all(row).stream().allMatch(c -> c.text().isEmpty());
  }

  /** Letters of a column as spreadsheets count them: A, B, …, Z, AA. */
  static String letters(int index) {
    StringBuilder letters = new StringBuilder();
    for (int i = index; i >= 0; i = i / 26 - 1) {
      letters.insert(0, (char) ('A' + i % 26));
    }
    return letters.toString();
  }
}
