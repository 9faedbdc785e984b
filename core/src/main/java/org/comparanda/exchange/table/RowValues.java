package org.comparanda.exchange.table;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;

/** The values of a row: which numbers its cells hold, and whether the element may have them. */
final class RowValues {
  private final TableOptions options;
  private final KnownWords known;
  private final NumberCells numbers;
  private final String file;

  RowValues(String file, TableOptions options, KnownWords known, NumberCells numbers) {
    this.file = file;
    this.options = options;
    this.known = known;
    this.numbers = numbers;
  }

  /** Told of every measured value as typed, before its unit is applied. */
  interface ValueWatcher {
    void saw(ElementKey element, TableColumn column, double value);
  }

  /** Those of some columns, in mm. */
  Map<MeasurementCode, Double> values(
      long row,
      List<Cell> cells,
      ElementKey element,
      List<TableColumn> columns,
      ProblemList problems,
      ValueWatcher watcher) {
    Map<MeasurementCode, Double> values = new HashMap<>();
    for (TableColumn column : columns) {
      if (!cells.get(column.index()).missing()) {
        MeasurementCode code = column.code().orElseThrow();
        OptionalDouble number = numbers.read(row, column, cells, problems);
        if (number.isPresent() && mayHave(row, element, code, column, cells, problems)) {
          double value = number.getAsDouble();
          if (mayBe(row, element, code, column, value, cells, problems)) {
            watcher.saw(element, column, value);
            values.put(code, value * column.unit().factor());
          }
        }
      }
    }
    return values;
  }

  /** Whether the number may stand there: a length is above zero. */
  boolean mayBe(
      long row,
      ElementKey element,
      MeasurementCode code,
      TableColumn column,
      double value,
      List<Cell> cells,
      ProblemList problems) {
    boolean may =
        value > 0
            || (options.numbers() == TableOptions.Numbers.ANY_SIGN
                && !known.isLength(element, code));
    if (!may) {
      NumberCells.notAboveZero(row, column, cells, problems);
    }
    return may;
  }

  /** Whether the element has that measurement, by the protocol or by what the table may bring. */
  boolean mayHave(
      long row,
      ElementKey element,
      MeasurementCode code,
      TableColumn column,
      List<Cell> cells,
      ProblemList problems) {
    if (known.knows(element, code)) {
      return true;
    }
    boolean plain = ReservedColumn.ofHeader(code.value()).isPresent();
    if (options.unknown() == TableOptions.Unknown.REGISTER || plain) {
      known.register(element, code, file);
      return true;
    }
    problems.unknownName(
        row,
        column.header(),
        Optional.of(cells.get(column.index()).text()),
        code + " isn't measured on the element " + element,
        NearestName.to(code.value(), known.codeNames(element))
                .map(n -> "The nearest is " + n + ". ")
                .orElse("")
            + "Empty the cell, or let the table bring the measurement by --register.");
    return false;
  }
}
