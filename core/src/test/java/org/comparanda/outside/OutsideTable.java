package org.comparanda.outside;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * A table of outside data or of results that another program gave: a first line with {@code #} that
 * names program, version and call, then a header, then rows; "NA" = not defined.
 *
 * <p>Files lie in the test resources under {@code outside/}; PROVENANCE.md there says whence.
 */
public record OutsideTable(String file, List<Row> rows) {
  /** Reads for instance {@code expected/c_hits.csv}. */
  public static OutsideTable read(String file) {
    var stream =
        Objects.requireNonNull(
            OutsideTable.class.getResourceAsStream("/outside/" + file), "no such table: " + file);
    try (var csv =
        CsvReader.builder()
            .commentStrategy(CommentStrategy.SKIP)
            .ofNamedCsvRecord(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return new OutsideTable(file, csv.stream().map(Row::new).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The rows for which the condition holds, in the order of the file. */
  public OutsideTable where(Predicate<Row> condition) {
    return new OutsideTable(file, rows.stream().filter(condition).toList());
  }

  /** The rows whose column has this text. */
  public OutsideTable where(String column, String text) {
    return where(row -> row.text(column).equals(text));
  }

  /** One row of the table. */
  public record Row(NamedCsvRecord cells) {
    public String text(String column) {
      return cells.getField(column);
    }

    public double number(String column) {
      return Double.parseDouble(text(column));
    }

    public int count(String column) {
      return Integer.parseInt(text(column));
    }

    /** False for "NA". */
    public boolean has(String column) {
      return !text(column).equals("NA");
    }
  }
}
