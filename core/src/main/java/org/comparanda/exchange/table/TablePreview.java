package org.comparanda.exchange.table;

import java.util.List;

/**
 * The beginning of a table, as it stands, with a guess for each column.
 *
 * @param layout how its cells are parted, or which sheet
 * @param headerRow the row in which the header stands, counted as a spreadsheet counts
 * @param belowTitle whether that row is a guess, since the first rows look like a title
 * @param columns one guess a column, in the order of the table
 * @param rows its first rows, as many cells as columns
 * @param roles all that a column may be: the reserved ones, then the measurements
 */
public record TablePreview(
    String layout,
    long headerRow,
    boolean belowTitle,
    List<ColumnGuess> columns,
    List<List<String>> rows,
    List<String> roles) {
  /** So many rows are shown. */
  public static final int ROWS = 20;

  public TablePreview {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    roles = List.copyOf(roles);
  }

  /** Whether a column holds numbers in all rows shown that hold anything there. */
  public boolean holdsNumbers(int column) {
    List<String> cells =
        rows.stream()
            .filter(row -> column < row.size() && !NumberText.missing(row.get(column)))
            .map(row -> row.get(column))
            .toList();
    return !cells.isEmpty()
        && cells.stream()
            .allMatch(
                cell ->
                    NumberText.read(cell, DecimalMark.POINT).isPresent()
                        || NumberText.read(cell, DecimalMark.COMMA).isPresent());
  }
}
