package org.comparanda.demo;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The CSV files of the demo: packed beside this class, written with LF. */
final class DemoTable {
  private DemoTable() {}

  /** All rows of a file packed with the program. */
  static List<NamedCsvRecord> rows(String file) {
    return parse(text(file));
  }

  static List<NamedCsvRecord> parse(String text) {
    return CsvReader.builder().ofNamedCsvRecord(text).stream().toList();
  }

  /** The text of a file packed with the program. */
  static String text(String file) {
    try (@Nullable InputStream in = DemoTable.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException(file + " is missing from the program.");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(file + " could not be read.", e);
    }
  }

  static String write(List<String> header, List<List<String>> rows) {
    StringWriter text = new StringWriter();
    CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text);
    csv.writeRecord(header);
    rows.forEach(csv::writeRecord);
    return text.toString();
  }
}
