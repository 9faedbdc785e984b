package org.comparanda.exchange.dwca;

import java.util.List;
import java.util.function.Function;
import org.comparanda.exchange.csv.HarmlessCsv;

/**
 * One file of an archive: what a row of it is, its columns, its rows.
 *
 * @param name file name inside the archive
 * @param rowType term of what a row is
 * @param key the cell that joins a row to its core row: the bone's number
 * @param columns the other columns, in order
 */
record DataFile<T>(
    String name, String rowType, Function<T, String> key, List<Column<T>> columns, List<T> rows) {
  /** A column with the term that says what it means. */
  record Column<T>(String term, Function<T, String> cell) {
    String header() {
      return term.substring(term.lastIndexOf('/') + 1);
    }
  }

  /** Header and rows. The first column joins. */
  String csv(String keyHeader) {
    HarmlessCsv csv = new HarmlessCsv();
    csv.row(
        java.util.stream.Stream.concat(
                java.util.stream.Stream.of(keyHeader), columns.stream().map(Column::header))
            .toList());
    for (T row : rows) {
      csv.row(
          java.util.stream.Stream.concat(
                  java.util.stream.Stream.of(key.apply(row)),
                  columns.stream().map(c -> c.cell().apply(row)))
              .toList());
    }
    return csv.text();
  }
}
