package org.comparanda.exchange.table;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.measurement.MeasurementCode;

/**
 * How a table was read, for the person to check.
 *
 * @param file name of the file
 * @param separator found in the header row
 * @param decimal found in the numbers
 * @param rows bones read
 * @param measurements read, in the order of the table
 * @param units what each was taken to be in, in words, in the same order
 * @param notRead headers of the columns left aside
 * @param mapped the columns for which another header was named and found
 */
public record TableFacts(
    String file,
    Separator separator,
    DecimalMark decimal,
    long rows,
    List<MeasurementCode> measurements,
    List<String> units,
    List<String> notRead,
    Set<String> mapped) {
  public TableFacts {
    measurements = List.copyOf(measurements);
    units = List.copyOf(units);
    notRead = List.copyOf(notRead);
    mapped = Set.copyOf(mapped);
  }

  /** One line: what was found and what was left aside. */
  public String sentence() {
    StringBuilder read = new StringBuilder();
    for (int i = 0; i < measurements.size(); i++) {
      read.append(i == 0 ? "" : ", ").append(measurements.get(i)).append(units.get(i));
    }
    String aside =
        notRead.isEmpty() ? "" : " Not read: " + notRead.stream().collect(Collectors.joining(", "));
    return file
        + ": "
        + rows
        + (rows == 1 ? " row" : " rows")
        + "; "
        + separator.word()
        + " between columns, decimal "
        + decimal.word()
        + "; read "
        + read
        + "."
        + (aside.isEmpty() ? "" : aside + ".");
  }
}
