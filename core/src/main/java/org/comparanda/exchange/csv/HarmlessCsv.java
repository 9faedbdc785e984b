package org.comparanda.exchange.csv;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.io.Writer;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Comma-separated text (RFC 4180, lines end in LF). A cell that a spreadsheet would take for a
 * formula (it begins with =, +, -, @, a tab or a line end, and is no number) gets an apostrophe in
 * front, also where apostrophes stand there already, so that {@link #plain} gives every cell back
 * as it was.
 */
public final class HarmlessCsv {
  private static final Pattern LIKE_A_FORMULA = Pattern.compile("(?s)'*[=+@\\t\\r\\n-].*");
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?([eE][+-]?\\d+)?");

  private final Writer text;
  private final CsvWriter rows;

  public HarmlessCsv() {
    this(new StringWriter());
  }

  /** Rows that go to {@code writer} one by one. */
  public HarmlessCsv(Writer writer) {
    text = writer;
    rows = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(writer);
  }

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
    return LIKE_A_FORMULA.matcher(cell).matches() && !NUMBER.matcher(cell).matches()
        ? "'" + cell
        : cell;
  }

  /** The cell without the apostrophe that {@link #harmless} put in front. */
  public static String plain(String cell) {
    return cell.startsWith("'") && LIKE_A_FORMULA.matcher(cell).matches()
        ? cell.substring(1)
        : cell;
  }
}
