package org.comparanda.exchange.csv;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.util.List;

/**
 * Comma-separated text (RFC 4180, lines end in LF). A cell that a spreadsheet would take for a
 * formula (it begins with =, +, -, @, a tab or a line end, and is no number) gets an apostrophe in
 * front.
 */
public final class HarmlessCsv {
  private final StringWriter text = new StringWriter();
  private final CsvWriter rows = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text);

  /** One row more. */
  public HarmlessCsv row(List<String> cells) {
    rows.writeRecord(cells.stream().map(HarmlessCsv::harmless).toList());
    return this;
  }

  /** The text so far. */
  public String text() {
    return text.toString();
  }

  /** The cell, with an apostrophe in front where it could start a formula. */
  public static String harmless(String cell) {
    if (cell.isEmpty() || "=+-@\t\r\n".indexOf(cell.charAt(0)) < 0) {
      return cell;
    }
    return cell.matches("[+-]?\\d+(\\.\\d+)?") ? cell : "'" + cell;
  }
}
