package org.comparanda.exchange.table;

import java.util.List;
import java.util.regex.Pattern;

/** Finds the decimal mark from all cells that should be numbers. */
final class DecimalScan {
  private static final Pattern COMMA = Pattern.compile("[+-]?\\d*,\\d+([eE][+-]?\\d+)?");
  private static final Pattern COMMA_AND_THREE = Pattern.compile("[+-]?\\d{1,3},\\d{3}");
  private static final Pattern POINT = Pattern.compile("[+-]?\\d*\\.\\d+([eE][+-]?\\d+)?");
  private static final Pattern WHOLE = Pattern.compile("[+-]?\\d+[.,]?([eE][+-]?\\d+)?");

  private final List<TableColumn> columns;
  private final long[] values;
  private final long[] numbers;
  private long commas;
  private long points;
  private boolean onlyThrees = true;
  private long firstRow;
  private String firstColumn = "";
  private String firstValue = "";

  DecimalScan(List<TableColumn> numericColumns) {
    columns = numericColumns;
    values = new long[columns.size()];
    numbers = new long[columns.size()];
  }

  void row(long number, List<Cell> cells) {
    for (int i = 0; i < columns.size(); i++) {
      Cell cell = cells.get(columns.get(i).index());
      if (!cell.missing()) {
        values[i]++;
        look(number, i, cell);
      }
    }
  }

  private void look(long row, int column, Cell held) {
    String cell = held.text();
    if (held.kind() != Cell.Kind.TEXT) {
      numbers[column] += held.kind() == Cell.Kind.NUMBER ? 1 : 0;
    } else if (COMMA.matcher(cell).matches()) {
      numbers[column]++;
      if (commas++ == 0) {
        firstRow = row;
        firstColumn = columns.get(column).header();
        firstValue = cell;
      }
      onlyThrees &= COMMA_AND_THREE.matcher(cell).matches();
    } else if (POINT.matcher(cell).matches()) {
      numbers[column]++;
      points++;
    } else if (WHOLE.matcher(cell).matches()) {
      numbers[column]++;
    }
  }

  /** The mark; a problem is added where the numbers allow both. */
  DecimalMark mark(TableOptions options, ProblemList problems) {
    if (options.decimal().isPresent()) {
      return options.decimal().get();
    }
    if (commas == 0) {
      return DecimalMark.POINT;
    }
    if (points == 0 && onlyThrees) {
      problems.cell(
          firstRow,
          firstColumn,
          firstValue,
          "every number with a comma has exactly three decimals, so the comma could part thousands",
          "Say which: --decimal comma or --decimal point.");
    }
    return points >= commas ? DecimalMark.POINT : DecimalMark.COMMA;
  }

  /** Whether a column has cells but no number in any of them. */
  boolean holdsNoNumber(TableColumn column) {
    int i = columns.indexOf(column);
    return i >= 0 && values[i] > 0 && numbers[i] == 0;
  }
}
