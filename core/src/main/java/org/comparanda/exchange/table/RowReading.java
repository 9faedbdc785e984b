package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;

/** Understands the cells of one row, every problem noted with its row, column and value. */
final class RowReading {
  private final TableOptions options;
  private final NumberCells numbers;
  private final RowText text;
  private final RowValues values;
  private final LongRow longRow;
  private final List<TableColumn> measured;
  private final Map<ElementKey, List<TableColumn>> named = new LinkedHashMap<>();

  RowReading(
      String file,
      TableOptions options,
      KnownWords known,
      DecimalMark decimal,
      List<TableColumn> columns) {
    this.options = options;
    numbers = new NumberCells(decimal);
    text = new RowText(file, options, known, numbers, columns);
    values = new RowValues(file, options, known, numbers);
    longRow = new LongRow(options, known, numbers, text, values);
    measured = columns.stream().filter(c -> c.code().isPresent() && c.element().isEmpty()).toList();
    for (TableColumn column : columns) {
      column.element().ifPresent(e -> named.computeIfAbsent(e, n -> new ArrayList<>()).add(column));
    }
  }

  /**
   * The bones of the row: one, or one for each element that its headers name; none when it is one
   * of another element than the picked one.
   */
  List<BoneRow> read(
      long row, List<Cell> cells, ProblemList problems, RowValues.ValueWatcher watcher) {
    text.texts(row, cells, problems);
    if (ofTheAnimalAlone(cells)) {
      return List.of(text.bone(row, cells, ElementKey.UNNAMED, Map.of(), problems));
    }
    if (text.has(ReservedColumn.MEASUREMENT)) {
      return longRow.reading(row, cells, problems, watcher);
    }
    Map<ElementKey, List<TableColumn>> columns = new LinkedHashMap<>();
    text.element(row, cells, problems).ifPresent(e -> columns.put(e, new ArrayList<>(measured)));
    named.forEach((e, of) -> columns.computeIfAbsent(e, n -> new ArrayList<>()).addAll(of));
    if (columns.isEmpty()) {
      return List.of();
    }
    Map<ElementKey, Map<MeasurementCode, Double>> read = new LinkedHashMap<>();
    columns.forEach((e, of) -> read.put(e, values.values(row, cells, e, of, problems, watcher)));
    ElementKey first = read.keySet().iterator().next();
    BoneRow bone = text.bone(row, cells, first, read.getOrDefault(first, Map.of()), problems);
    if (read.size() == 1) {
      return List.of(bone);
    }
    List<BoneRow> bones =
        read.entrySet().stream()
            .filter(e -> !e.getValue().isEmpty())
            .map(e -> bone.of(e.getKey(), side(bone, e.getKey()), e.getValue()))
            .toList();
    return bones.isEmpty() ? List.of(bone) : bones;
  }

  /** How many numbers stood in cells of text, in words; nothing where none did. */
  Optional<String> readFromText() {
    return numbers.readFromText();
  }

  /** What a long table held, each measurement and unit as if it had a column of its own. */
  List<TableColumn> longColumns() {
    return longRow.columns();
  }

  /** The side as written; without one, what the element is. */
  private Side side(BoneRow bone, ElementKey element) {
    return bone.side() == Side.NOT_KNOWN || bone.side() == Side.AXIAL
        ? text.unwritten(element)
        : bone.side();
  }

  /** A row that names an animal, no element and no value: of the animal alone. */
  private boolean ofTheAnimalAlone(List<Cell> cells) {
    return text.has(ReservedColumn.ELEMENT)
        && options.element().isEmpty()
        && text.text(cells, ReservedColumn.ELEMENT).isEmpty()
        && !text.text(cells, ReservedColumn.ANIMAL).isEmpty()
        && text.text(cells, ReservedColumn.MEASUREMENT).isEmpty()
        && (!text.has(ReservedColumn.VALUE) || text.text(cells, ReservedColumn.VALUE).isEmpty())
        && measured.stream().allMatch(c -> cells.get(c.index()).missing())
        && named.values().stream()
            .flatMap(List::stream)
            .allMatch(c -> cells.get(c.index()).missing());
  }
}
