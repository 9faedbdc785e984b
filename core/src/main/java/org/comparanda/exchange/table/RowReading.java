package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
import org.comparanda.measurement.LengthUnit;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.register.CardField;
import org.comparanda.taxon.TaxonName;

/** Understands the cells of one row, every problem noted with its row, column and value. */
final class RowReading {
  private final TableOptions options;
  private final KnownWords known;
  private final NumberCells numbers;
  private final Map<ReservedColumn, TableColumn> reserved = new EnumMap<>(ReservedColumn.class);
  private final List<TableColumn> measured;
  private final Map<ElementKey, List<TableColumn>> named = new LinkedHashMap<>();
  private final String file;
  private final Set<TableColumn> longColumns = new LinkedHashSet<>();

  RowReading(
      String file,
      TableOptions options,
      KnownWords known,
      DecimalMark decimal,
      List<TableColumn> columns) {
    this.file = file;
    this.options = options;
    this.known = known;
    numbers = new NumberCells(decimal);
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
  List<BoneRow> read(long row, List<Cell> cells, ProblemList problems, ValueWatcher watcher) {
    texts(row, cells, problems);
    if (ofTheAnimalAlone(cells)) {
      return List.of(bone(row, cells, ElementKey.UNNAMED, Map.of(), problems));
    }
    if (has(ReservedColumn.MEASUREMENT)) {
      return reading(row, cells, problems, watcher);
    }
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

  /** One reading of one bone, of a long table. */
  private List<BoneRow> reading(
      long row, List<Cell> cells, ProblemList problems, ValueWatcher watcher) {
    TableColumn measurement = Objects.requireNonNull(reserved.get(ReservedColumn.MEASUREMENT));
    TableColumn value = Objects.requireNonNull(reserved.get(ReservedColumn.VALUE));
    String name = text(cells, ReservedColumn.MEASUREMENT);
    boolean valued = !cells.get(value.index()).missing();
    Optional<ColumnSubject> subject =
        name.isEmpty() ? Optional.empty() : Optional.of(ColumnSubject.of(name, known));
    Optional<ElementKey> element =
        text(cells, ReservedColumn.ELEMENT).isEmpty()
            ? subject.flatMap(ColumnSubject::element).or(() -> element(row, cells, problems))
            : element(row, cells, problems);
    if (name.isEmpty() && valued) {
      problems.column(
          row, measurement.header(), "it is not said what was measured", "Fill the cell.");
    }
    if (element.isEmpty() || (!name.isEmpty() && !picked(name))) {
      return List.of();
    }
    Map<MeasurementCode, Double> values = new HashMap<>();
    if (valued && subject.isPresent()) {
      MeasurementCode code = subject.get().code();
      TableColumn read =
          new TableColumn(
              value.index(),
              "value of " + code,
              Optional.empty(),
              Optional.empty(),
              Optional.of(code),
              longUnit(row, code, cells, problems));
      OptionalDouble number = numbers.read(row, value, cells, problems);
      if (number.isPresent() && mayHave(row, element.get(), code, measurement, cells, problems)) {
        if (number.getAsDouble() <= 0 && isAboveZero(element.get(), code)) {
          NumberCells.notAboveZero(row, value, cells, problems);
        } else {
          longColumns.add(read);
          watcher.saw(element.get(), read, number.getAsDouble());
          values.put(code, number.getAsDouble() * read.unit().factor());
        }
      }
    }
    return List.of(bone(row, cells, element.get(), values, problems));
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
    String symbol = text(cells, ReservedColumn.UNIT);
    if (!symbol.isEmpty()) {
      Optional<LengthUnit> unit = LengthUnit.ofSymbol(symbol);
      if (unit.isEmpty()) {
        problems.cell(
            row, header(ReservedColumn.UNIT), symbol, "not a unit", "Write mm, cm, m or in.");
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

  /** How many numbers stood in cells of text, in words; nothing where none did. */
  Optional<String> readFromText() {
    return numbers.readFromText();
  }

  /** What a long table held, each measurement and unit as if it had a column of its own. */
  List<TableColumn> longColumns() {
    return List.copyOf(longColumns);
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
      List<Cell> cells,
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
        card(cells),
        values);
  }

  private Map<CardField, String> card(List<Cell> cells) {
    Map<CardField, String> card = new EnumMap<>(CardField.class);
    for (ReservedColumn column : reserved.keySet()) {
      column
          .card()
          .filter(field -> !text(cells, column).isEmpty())
          .ifPresent(field -> card.put(field, text(cells, column)));
    }
    return card;
  }

  /** A row that names an animal, no element and no value: of the animal alone. */
  private boolean ofTheAnimalAlone(List<Cell> cells) {
    return has(ReservedColumn.ELEMENT)
        && options.element().isEmpty()
        && text(cells, ReservedColumn.ELEMENT).isEmpty()
        && !text(cells, ReservedColumn.ANIMAL).isEmpty()
        && text(cells, ReservedColumn.MEASUREMENT).isEmpty()
        && (!has(ReservedColumn.VALUE) || text(cells, ReservedColumn.VALUE).isEmpty())
        && measured.stream().allMatch(c -> cells.get(c.index()).missing())
        && named.values().stream()
            .flatMap(List::stream)
            .allMatch(c -> cells.get(c.index()).missing());
  }

  private Optional<ElementKey> element(long row, List<Cell> cells, ProblemList problems) {
    String cell = text(cells, ReservedColumn.ELEMENT);
    if (cell.isEmpty()) {
      return options
          .element()
          .or(
              () ->
                  measured.isEmpty() && !has(ReservedColumn.MEASUREMENT)
                      ? Optional.empty()
                      : unnamed(row, problems));
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

  private Optional<TaxonName> taxon(long row, List<Cell> cells, ProblemList problems) {
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

  private Fusion fusion(long row, List<Cell> cells, BoneWords words, ReservedColumn column) {
    return words.fusion(row, header(column), text(cells, column)).orElse(Fusion.CANT_SEE);
  }

  private Optional<Double> body(
      long row, List<Cell> cells, ReservedColumn which, ProblemList problems) {
    TableColumn column = reserved.get(which);
    if (column == null || cells.get(column.index()).missing()) {
      return Optional.empty();
    }
    OptionalDouble value = numbers.read(row, column, cells, problems);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (value.getAsDouble() <= 0) {
      NumberCells.notAboveZero(row, column, cells, problems);
      return Optional.empty();
    }
    return Optional.of(value.getAsDouble() * column.unit().factor());
  }

  private Map<MeasurementCode, Double> values(
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
          if (value <= 0 && isAboveZero(element, code)) {
            NumberCells.notAboveZero(row, column, cells, problems);
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

  /** Text columns: a date is one that a spreadsheet made of something else. */
  private void texts(long row, List<Cell> cells, ProblemList problems) {
    for (TableColumn column : reserved.values()) {
      Cell cell = cells.get(column.index());
      boolean text = !column.numeric();
      if (text && cell.kind() == Cell.Kind.FAULT) {
        NumberCells.fault(row, column, cell, problems);
      } else if (text
          && cell.kind() == Cell.Kind.DATE
          && column.reserved().filter(r -> r == ReservedColumn.REMARKS || r.day()).isEmpty()) {
        problems.cell(
            row,
            column.header(),
            cell.text(),
            "a date, where text is expected",
            "The spreadsheet made a date of what was typed: type it again in a cell of the format"
                + " Text.");
      }
    }
  }

  private String text(List<Cell> cells, ReservedColumn column) {
    TableColumn where = reserved.get(column);
    return where == null ? "" : cells.get(where.index()).orEmpty();
  }

  private String header(ReservedColumn column) {
    TableColumn where = reserved.get(column);
    return where == null ? column.header() : where.header();
  }
}
