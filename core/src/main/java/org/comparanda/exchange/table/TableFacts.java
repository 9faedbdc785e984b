package org.comparanda.exchange.table;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.measurement.MeasurementCode;

/**
 * How a table was read, for the person to check.
 *
 * @param file name of the file
 * @param layout how its cells are parted, or the sheet that was read
 * @param decimal found in the numbers
 * @param rows bones read
 * @param measurements read, in the order of the table
 * @param units what each was taken to be in, in words, in the same order
 * @param notRead headers of the columns left aside
 * @param mapped the columns for which another header was named and found
 * @param notes what a person should know of how single cells were read
 */
public record TableFacts(
    String file,
    String layout,
    DecimalMark decimal,
    long rows,
    List<MeasurementCode> measurements,
    List<String> units,
    List<String> notRead,
    Set<String> mapped,
    List<String> notes) {
  public TableFacts {
    measurements = List.copyOf(measurements);
    units = List.copyOf(units);
    notRead = List.copyOf(notRead);
    mapped = Set.copyOf(mapped);
    notes = List.copyOf(notes);
  }

  /** Of a table of which only the beginning was looked at. */
  static TableFacts notRead(String file, String layout) {
    return new TableFacts(
        file, layout, DecimalMark.POINT, 0, List.of(), List.of(), List.of(), Set.of(), List.of());
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
        + layout
        + ", decimal "
        + decimal.word()
        + "; read "
        + read
        + "."
        + (aside.isEmpty() ? "" : aside + ".")
        + notes.stream().map(n -> " " + n).collect(Collectors.joining());
  }
}
