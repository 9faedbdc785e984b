package org.comparanda.exchange.table;

import java.util.EnumMap;
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
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.register.CardField;
import org.comparanda.taxon.TaxonName;

/** What a row says beside its values, every problem noted with its row, column and value. */
final class RowText {
  private final TableOptions options;
  private final KnownWords known;
  private final NumberCells numbers;
  private final String file;
  private final Map<ReservedColumn, TableColumn> reserved = new EnumMap<>(ReservedColumn.class);
  private final boolean holdsMeasurements;

  RowText(
      String file,
      TableOptions options,
      KnownWords known,
      NumberCells numbers,
      List<TableColumn> columns) {
    this.file = file;
    this.options = options;
    this.known = known;
    this.numbers = numbers;
    columns.forEach(c -> c.reserved().ifPresent(r -> reserved.put(r, c)));
    holdsMeasurements =
        has(ReservedColumn.MEASUREMENT)
            || columns.stream().anyMatch(c -> c.code().isPresent() && c.element().isEmpty());
  }

  boolean has(ReservedColumn column) {
    return reserved.containsKey(column);
  }

  TableColumn column(ReservedColumn column) {
    return Objects.requireNonNull(reserved.get(column));
  }

  /** Looks at the text columns: a date is one that a spreadsheet made of something else. */
  void texts(long row, List<Cell> cells, ProblemList problems) {
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

  String text(List<Cell> cells, ReservedColumn column) {
    TableColumn where = reserved.get(column);
    return where == null ? "" : cells.get(where.index()).orEmpty();
  }

  String header(ReservedColumn column) {
    TableColumn where = reserved.get(column);
    return where == null ? column.header() : where.header();
  }

  /** All that the row says, with these values. */
  BoneRow bone(
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

  /** The side of an element of which none is written. */
  Side unwritten(ElementKey element) {
    return known.symmetry(element) == Symmetry.AXIAL ? Side.AXIAL : Side.NOT_KNOWN;
  }

  /** The element of the row; none when another one was picked, or with a problem. */
  Optional<ElementKey> element(long row, List<Cell> cells, ProblemList problems) {
    String cell = text(cells, ReservedColumn.ELEMENT);
    if (cell.isEmpty()) {
      return options
          .element()
          .or(() -> holdsMeasurements ? unnamed(row, problems) : Optional.empty());
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
    return Optional.of(known.standing(taxon));
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
}
