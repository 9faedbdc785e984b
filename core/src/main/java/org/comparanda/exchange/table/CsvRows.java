package org.comparanda.exchange.table;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The rows of one CSV file, streamed; blank lines are passed over but counted. */
final class CsvRows implements RowSource {
  private static final int LONGEST_CELL = 1 << 16;
  private static final long TELL_EVERY = 1 << 20;

  private final Path path;
  private final Separator separator;
  private final long headerRow;
  private final ReadingProgress progress;

  CsvRows(Path path, Separator separator, long headerRow, ReadingProgress progress) {
    this.path = path;
    this.separator = separator;
    this.headerRow = headerRow;
    this.progress = progress;
  }

  @Override
  public String layout() {
    return separator.word() + " between columns";
  }

  @Override
  public RowSource watchedBy(ReadingProgress other) {
    return new CsvRows(path, separator, headerRow, other);
  }

  @Override
  public RowSource from(long row) throws IOException {
    try (BufferedReader text = TextCheck.text(path)) {
      return new CsvRows(path, HeaderSeparator.of(text, row), row, progress);
    }
  }

  @Override
  public List<SortedMap<Long, List<String>>> tops(int most) throws IOException {
    List<SortedMap<Long, List<String>>> tops = new ArrayList<>();
    tops.add(top(most));
    for (Separator other : Separator.values()) {
      if (other != separator) {
        tops.add(new CsvRows(path, other, headerRow, progress).top(most));
      }
    }
    return tops;
  }

  private SortedMap<Long, List<String>> top(int most) throws IOException {
    SortedMap<Long, List<String>> top = new TreeMap<>();
    long number = 0;
    try (CsvReader<CsvRecord> rows = open(Files.newInputStream(path))) {
      for (CsvRecord row : rows) {
        number++;
        if (top.size() == most) {
          break;
        }
        if (!blank(row)) {
          top.put(number, row.getFields().stream().map(String::strip).toList());
        }
      }
    } catch (CsvParseException | java.io.UncheckedIOException broken) {
      return top;
    }
    return top;
  }

  @Override
  public List<String> header() throws IOException {
    long number = 0;
    try (CsvReader<CsvRecord> rows = open(Files.newInputStream(path))) {
      for (CsvRecord row : rows) {
        number++;
        if (number >= headerRow && !blank(row)) {
          return row.getFields().stream().map(String::strip).toList();
        }
      }
      return List.of();
    } catch (CsvParseException | java.io.UncheckedIOException broken) {
      return List.of();
    }
  }

  @Override
  public void eachRow(ProblemList problems, RowVisitor visitor) throws IOException {
    long row = 0;
    int columns = -1;
    try (CsvReader<CsvRecord> rows = open(watched())) {
      for (CsvRecord cells : rows) {
        row++;
        goOnOrStop();
        if (row < headerRow || blank(cells)) {
          continue;
        }
        if (columns < 0) {
          columns = cells.getFieldCount();
        } else if (cells.getFieldCount() != columns) {
          problems.row(row, lengthDiffers(cells, columns), lengthRemedy(cells, columns));
        } else {
          visitor.row(row, cells.getFields().stream().map(Cell::typed).toList());
        }
      }
    } catch (CsvParseException broken) {
      problems.row(
          row + 1,
          "the row is no CSV: there is text after a closing quote, or a cell without end",
          "Look at the quotes (\") and separators of this row.");
    }
  }

  /** Asked between rows: within a row the CSV reader would take it for a broken one. */
  private void goOnOrStop() {
    RowSource.goOnOrStop(progress, path);
  }

  private static String lengthDiffers(CsvRecord cells, int columns) {
    return "the row has "
        + cells.getFieldCount()
        + (cells.getFieldCount() == 1 ? " cell" : " cells")
        + ", the header "
        + columns;
  }

  private String lengthRemedy(CsvRecord cells, int columns) {
    return separator == Separator.COMMA && cells.getFieldCount() > columns
        ? "Give every row as many cells as the header; a decimal comma needs semicolon, tab or"
            + " quotes."
        : "Give every row as many cells as the header, empty ones included.";
  }

  private static boolean blank(CsvRecord row) {
    return row.getFieldCount() == 0 || (row.getFieldCount() == 1 && row.getField(0).isBlank());
  }

  private CsvReader<CsvRecord> open(InputStream bytes) throws IOException {
    return CsvReader.builder()
        .fieldSeparator(separator.sign())
        .skipEmptyLines(false)
        .acceptCharsAfterQuotes(false)
        .maxBufferSize(LONGEST_CELL)
        .ofCsvRecord(TextCheck.text(bytes));
  }

  private InputStream watched() throws IOException {
    long size = Files.size(path);
    return new FilterInputStream(new BufferedInputStream(Files.newInputStream(path))) {
      private long done;
      private long told;

      @Override
      public int read() throws IOException {
        int b = super.read();
        counted(b < 0 ? 0 : 1);
        return b;
      }

      @Override
      public int read(byte[] bytes, int from, int length) throws IOException {
        int n = super.read(bytes, from, length);
        counted(Math.max(n, 0));
        return n;
      }

      private void counted(int n) {
        done += n;
        if (done - told >= TELL_EVERY || (n > 0 && done == size)) {
          told = done;
          progress.read(done, size);
        }
      }
    };
  }
}
