package org.comparanda.exchange.table;

import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.measurement.MeasurementCode;

/**
 * One thing wrong with a table, as a person would look for it.
 *
 * @param row row as a spreadsheet counts it, the header being row 1; empty when it is the whole
 *     file
 * @param column header of the column; empty when it is the whole row
 * @param cell the cell of a spreadsheet, {@code D7}; empty for a text table
 * @param value the offending text; empty when there is none
 * @param message what is wrong
 * @param remedy what to do
 * @param answer what a person may say instead of correcting the table
 */
public record TableProblem(
    String file,
    Optional<Long> row,
    Optional<String> column,
    Optional<String> cell,
    Optional<String> value,
    String message,
    String remedy,
    Optional<Answer> answer) {

  /** What can be said of a table without touching it. */
  public sealed interface Answer {
    /** The unit of the column of this code; it looks like that one. */
    record SayUnit(MeasurementCode code, LengthUnit looksLike) implements Answer {}

    /** Which sheet of the workbook is meant. */
    record SaySheet(List<String> sheets) implements Answer {
      public SaySheet {
        sheets = List.copyOf(sheets);
      }
    }

    /** That the table may bring names that are not known yet. */
    record Register() implements Answer {}
  }

  static TableProblem ofFile(String file, String message, String remedy) {
    return new TableProblem(
        file,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        message,
        remedy,
        Optional.empty());
  }

  /** The same problem with the cell of a spreadsheet named; a text table has none. */
  TableProblem in(Optional<String> where) {
    return new TableProblem(
        file, row, column, cell.or(() -> where), value, message, remedy, answer);
  }

  /** Where, what, and what to do, in one line. */
  public String sentence() {
    StringBuilder line = new StringBuilder(file);
    row.ifPresent(r -> line.append(", row ").append(r));
    column.ifPresent(c -> line.append(", column ").append(c));
    cell.ifPresent(c -> line.append(" (cell ").append(c).append(')'));
    line.append(": ").append(message);
    value.ifPresent(v -> line.append(": \"").append(shortened(v)).append('"'));
    return line.append(". ").append(remedy).toString();
  }

  private static String shortened(String text) {
    String oneLine = text.replaceAll("\\s+", " ");
    return oneLine.length() <= 60 ? oneLine : oneLine.substring(0, 57) + "...";
  }
}
