package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.bone.Symmetry;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.taxon.TaxonName;

/** Understands the cells of one row, every problem noted with its row, column and value. */
final class RowReading {
  private final TableOptions options;
  private final KnownWords known;
  private final DecimalMark decimal;
  private final Map<ReservedColumn, TableColumn> reserved = new EnumMap<>(ReservedColumn.class);
  private final List<TableColumn> measured;
  private final Map<ElementKey, List<TableColumn>> named = new LinkedHashMap<>();
  private final String file;

  RowReading(
      String file,
      TableOptions options,
      KnownWords known,
      DecimalMark decimal,
      List<TableColumn> columns) {
    this.file = file;
    this.options = options;
    this.known = known;
    this.decimal = decimal;
    columns.forEach(c -> c.reserved().ifPresent(r -> reserved.put(r, c)));
    measured = columns.stream().filter(c -> c.code().isPresent() && c.element().isEmpty()).toList();
    for (TableColumn column : columns) {
      column.element().ifPresent(e -> named.computeIfAbsent(e, n -> new ArrayList<>()).add(column));
    }
  }

  /** Told of every measured value as typed, before its unit is applied. */
  interface ValueWatcher {
    void saw(ElementKey element, TableColumn column, double value);
  }

  boolean has(ReservedColumn column) {
    return reserved.containsKey(column);
  }

  /**
   * The bones of the row: one, or one for each element that its headers name; none when it is one
   * of another element than the picked one.
   */
  List<BoneRow> read(long row, List<String> cells, ProblemList problems, ValueWatcher watcher) {
    Map<ElementKey, List<TableColumn>> columns = new LinkedHashMap<>();
    element(row, cells, problems).ifPresent(e -> columns.put(e, new ArrayList<>(measured)));
    named.forEach((e, of) -> columns.computeIfAbsent(e, n -> new ArrayList<>()).addAll(of));
    if (columns.isEmpty()) {
      return List.of();
    }
    Map<ElementKey, Map<MeasurementCode, Double>> values = new LinkedHashMap<>();
    columns.forEach((e, of) -> values.put(e, values(row, cells, e, of, problems, watcher)));
    ElementKey first = values.keySet().iterator().next();
    BoneRow bone = bone(row, cells, first, values.getOrDefault(first, Map.of()), problems);
    if (values.size() == 1) {
      return List.of(bone);
    }
    List<BoneRow> bones =
        values.entrySet().stream()
            .filter(e -> !e.getValue().isEmpty())
            .map(e -> bone.of(e.getKey(), side(bone, e.getKey()), e.getValue()))
            .toList();
    return bones.isEmpty() ? List.of(bone) : bones;
  }

  /** The side as written; without one, what the element is. */
  private Side side(BoneRow bone, ElementKey element) {
    return bone.side() == Side.NOT_KNOWN || bone.side() == Side.AXIAL
        ? unwritten(element)
        : bone.side();
  }

  private Side unwritten(ElementKey element) {
    return known.symmetry(element) == Symmetry.AXIAL ? Side.AXIAL : Side.NOT_KNOWN;
  }

  private BoneRow bone(
      long row,
      List<String> cells,
      ElementKey element,
      Map<MeasurementCode, Double> values,
      ProblemList problems) {
    BoneWords words = new BoneWords(problems);
    Set<Flag> flags =
        words.flags(row, header(ReservedColumn.FLAGS), text(cells, ReservedColumn.FLAGS));
    BoneState state =
        new BoneState(
            fusion(row, cells, words, ReservedColumn.FUSION_PROXIMAL),
            fusion(row, cells, words, ReservedColumn.FUSION_DISTAL),
            flags);
    return new BoneRow(
        row,
        text(cells, ReservedColumn.ANIMAL),
        text(cells, ReservedColumn.BONE),
        taxon(row, cells, problems),
        element,
        words
            .side(row, header(ReservedColumn.SIDE), text(cells, ReservedColumn.SIDE))
            .orElse(unwritten(element)),
        words
            .portion(row, header(ReservedColumn.PORTION), text(cells, ReservedColumn.PORTION))
            .orElse(Portion.WHOLE),
        state,
        text(cells, ReservedColumn.SEX),
        text(cells, ReservedColumn.AGE_CLASS),
        text(cells, ReservedColumn.ORIGIN),
        text(cells, ReservedColumn.DRAWER),
        text(cells, ReservedColumn.REMARKS),
        body(row, cells, ReservedColumn.BODY_LENGTH, problems),
        body(row, cells, ReservedColumn.BODY_MASS, problems),
        values);
  }

  private Optional<ElementKey> element(long row, List<String> cells, ProblemList problems) {
    String cell = text(cells, ReservedColumn.ELEMENT);
    if (cell.isEmpty()) {
      return options
          .element()
          .or(() -> measured.isEmpty() ? Optional.empty() : unnamed(row, problems));
    }
    ElementKey element = new ElementKey(cell);
    if (options.element().isPresent() && !options.element().get().equals(element)) {
      return Optional.empty();
    }
    if (!known.knows(element)) {
      if (options.unknown() == TableOptions.Unknown.REFUSE) {
        unknownName(row, ReservedColumn.ELEMENT, cell, "element", known.elementNames(), problems);
        return Optional.empty();
      }
      known.register(element, file);
    }
    return Optional.of(element);
  }

  private Optional<ElementKey> unnamed(long row, ProblemList problems) {
    if (options.unknown() == TableOptions.Unknown.REFUSE) {
      problems.row(
          row,
          "it is not said which element this is",
          "Add a column element, or give one for the whole table by --element.");
      return Optional.empty();
    }
    return Optional.of(ElementKey.UNNAMED);
  }

  private Optional<TaxonName> taxon(long row, List<String> cells, ProblemList problems) {
    String cell = text(cells, ReservedColumn.TAXON);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    TaxonName taxon = new TaxonName(cell);
    if (!known.knows(taxon)) {
      if (options.unknown() == TableOptions.Unknown.REFUSE) {
        unknownName(row, ReservedColumn.TAXON, cell, "taxon", known.taxonNames(), problems);
      }
      known.register(taxon);
    }
    return Optional.of(taxon);
  }

  private void unknownName(
      long row,
      ReservedColumn column,
      String cell,
      String what,
      List<String> names,
      ProblemList problems) {
    problems.unknownName(
        row,
        header(column),
        Optional.of(cell),
        "no " + what + " of this name is known",
        NearestName.to(cell, names).map(n -> "The nearest is " + n + ". ").orElse("")
            + "Correct the name, or let the table bring it by --register.");
  }

  private Fusion fusion(long row, List<String> cells, BoneWords words, ReservedColumn column) {
    return words.fusion(row, header(column), text(cells, column)).orElse(Fusion.CANT_SEE);
  }

  private Optional<Double> body(
      long row, List<String> cells, ReservedColumn which, ProblemList problems) {
    TableColumn column = reserved.get(which);
    if (column == null || NumberText.missing(cells.get(column.index()))) {
      return Optional.empty();
    }
    OptionalDouble value = number(row, column, cells, problems);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (value.getAsDouble() <= 0) {
      notAboveZero(row, column, cells, problems);
      return Optional.empty();
    }
    return Optional.of(value.getAsDouble() * column.unit().factor());
  }

  private Map<MeasurementCode, Double> values(
      long row,
      List<String> cells,
      ElementKey element,
      List<TableColumn> columns,
      ProblemList problems,
      ValueWatcher watcher) {
    Map<MeasurementCode, Double> values = new HashMap<>();
    for (TableColumn column : columns) {
      if (!NumberText.missing(cells.get(column.index()))) {
        MeasurementCode code = column.code().orElseThrow();
        OptionalDouble number = number(row, column, cells, problems);
        if (number.isPresent() && mayHave(row, element, code, column, cells, problems)) {
          double value = number.getAsDouble();
          if (value <= 0 && isAboveZero(element, code)) {
            notAboveZero(row, column, cells, problems);
          } else {
            watcher.saw(element, column, value);
            values.put(code, value * column.unit().factor());
          }
        }
      }
    }
    return values;
  }

  private boolean isAboveZero(ElementKey element, MeasurementCode code) {
    return options.numbers() == TableOptions.Numbers.ABOVE_ZERO || known.isLength(element, code);
  }

  private boolean mayHave(
      long row,
      ElementKey element,
      MeasurementCode code,
      TableColumn column,
      List<String> cells,
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
        Optional.of(cells.get(column.index())),
        code + " isn't measured on the element " + element,
        NearestName.to(code.value(), known.codeNames(element))
                .map(n -> "The nearest is " + n + ". ")
                .orElse("")
            + "Empty the cell, or let the table bring the measurement by --register.");
    return false;
  }

  private OptionalDouble number(
      long row, TableColumn column, List<String> cells, ProblemList problems) {
    String cell = cells.get(column.index());
    OptionalDouble value = NumberText.read(cell, decimal);
    if (value.isEmpty()) {
      problems.cell(
          row,
          column.header(),
          cell,
          "not a number",
          "Correct the cell, or leave it empty if it was not measured. (The decimal mark of this"
              + " file is the "
              + decimal.word()
              + ".)");
    }
    return value;
  }

  private static void notAboveZero(
      long row, TableColumn column, List<String> cells, ProblemList problems) {
    problems.cell(
        row,
        column.header(),
        cells.get(column.index()),
        "a measurement is above zero",
        "Correct the cell, or leave it empty if it was not measured.");
  }

  private String text(List<String> cells, ReservedColumn column) {
    TableColumn where = reserved.get(column);
    String cell = where == null ? "" : cells.get(where.index());
    return NumberText.missing(cell) ? "" : cell;
  }

  private String header(ReservedColumn column) {
    TableColumn where = reserved.get(column);
    return where == null ? column.header() : where.header();
  }
}
