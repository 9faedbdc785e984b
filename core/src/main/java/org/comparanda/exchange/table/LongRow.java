package org.comparanda.exchange.table;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.measurement.MeasurementCode;

/** Rows of a long table: one reading of one bone each. */
final class LongRow {
  private final TableOptions options;
  private final KnownWords known;
  private final NumberCells numbers;
  private final RowText text;
  private final RowValues values;
  private final Set<TableColumn> longColumns = new LinkedHashSet<>();

  LongRow(
      TableOptions options, KnownWords known, NumberCells numbers, RowText text, RowValues values) {
    this.options = options;
    this.known = known;
    this.numbers = numbers;
    this.text = text;
    this.values = values;
  }

  /** One reading of one bone, of a long table. */
  List<BoneRow> reading(
      long row, List<Cell> cells, ProblemList problems, RowValues.ValueWatcher watcher) {
    TableColumn measurement = text.column(ReservedColumn.MEASUREMENT);
    TableColumn value = text.column(ReservedColumn.VALUE);
    String name = text.text(cells, ReservedColumn.MEASUREMENT);
    boolean valued = !cells.get(value.index()).missing();
    Optional<ColumnSubject> subject =
        name.isEmpty() ? Optional.empty() : Optional.of(ColumnSubject.of(name, known));
    Optional<ElementKey> element =
        text.text(cells, ReservedColumn.ELEMENT).isEmpty()
            ? subject.flatMap(ColumnSubject::element).or(() -> text.element(row, cells, problems))
            : text.element(row, cells, problems);
    if (name.isEmpty() && valued) {
      problems.column(
          row, measurement.header(), "it is not said what was measured", "Fill the cell.");
    }
    if (element.isEmpty() || (!name.isEmpty() && !picked(name))) {
      return List.of();
    }
    Map<MeasurementCode, Double> read = new HashMap<>();
    if (valued && subject.isPresent()) {
      MeasurementCode code = subject.get().code();
      TableColumn asIf =
          new TableColumn(
              value.index(),
              "value of " + code,
              Optional.empty(),
              Optional.empty(),
              Optional.of(code),
              longUnit(row, code, cells, problems));
      OptionalDouble number = numbers.read(row, value, cells, problems);
      if (number.isPresent()
          && values.mayHave(row, element.get(), code, measurement, cells, problems)
          && values.mayBe(row, element.get(), code, value, number.getAsDouble(), cells, problems)) {
        longColumns.add(asIf);
        watcher.saw(element.get(), asIf, number.getAsDouble());
        read.put(code, number.getAsDouble() * asIf.unit().factor());
      }
    }
    return List.of(text.bone(row, cells, element.get(), read, problems));
  }

  private boolean picked(String name) {
    return options.only().isEmpty()
        || options.only().stream()
            .anyMatch(o -> ColumnSubject.of(o, known).meets(ColumnSubject.of(name, known)));
  }

  private ColumnUnit longUnit(
      long row, MeasurementCode code, List<Cell> cells, ProblemList problems) {
    LengthUnit told = options.units().get(code.value());
    if (told != null) {
      return ColumnUnit.of(told, ColumnUnit.SaidBy.PERSON);
    }
    String symbol = text.text(cells, ReservedColumn.UNIT);
    if (!symbol.isEmpty()) {
      Optional<LengthUnit> unit = LengthUnit.ofSymbol(symbol);
      if (unit.isEmpty()) {
        problems.cell(
            row, text.header(ReservedColumn.UNIT), symbol, "not a unit", "Write mm, cm, m or in.");
      }
      return ColumnUnit.of(unit.orElse(LengthUnit.MILLIMETRE), ColumnUnit.SaidBy.HEADER);
    }
    return options
        .unit()
        .map(u -> ColumnUnit.of(u, ColumnUnit.SaidBy.PERSON))
        .orElseGet(
            () ->
                known.protocolHas(code)
                    ? ColumnUnit.of(LengthUnit.MILLIMETRE, ColumnUnit.SaidBy.NOBODY)
                    : ColumnUnit.none());
  }

  /** What a long table held, each measurement and unit as if it had a column of its own. */
  List<TableColumn> columns() {
    return List.copyOf(longColumns);
  }
}
