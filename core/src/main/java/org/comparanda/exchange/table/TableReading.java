package org.comparanda.exchange.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.comparanda.check.BoneEntry;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.register.AnimalCard;

/** One file on its way through: text, header, decimal mark, every row, units. */
final class TableReading {
  private final Path path;
  private final String file;
  private final TableOptions options;
  private final KnownWords known;
  private final ReadingProgress progress;
  private final ProblemList problems;

  private final TableColumns found;
  private List<TableColumn> longColumns = List.of();
  private Optional<RowSource> source = Optional.empty();
  private final List<String> notes = new ArrayList<>();
  private long rows;
  private long values;
  private boolean measured = true;

  TableReading(Path path, TableOptions options, KnownWords known, ReadingProgress progress) {
    this.path = path;
    this.options = options;
    this.known = known;
    this.progress = progress;
    file = String.valueOf(path.getFileName());
    problems = new ProblemList(file);
    found = new TableColumns(file, options, known, problems);
  }

  TableOutcome<List<AnimalCard>> cards() {
    return assembled(cards -> cards);
  }

  TableOutcome<Shelf> shelf() {
    return assembled(cards -> new Shelf(cards.stream().map(AnimalCard::animal).toList()));
  }

  /** A cell that can't be read is listed; what is wrong with a row or the file refuses it. */
  TableOutcome<TableEntries> entries() {
    List<BoneEntry> entries = new ArrayList<>();
    checked(
        TableUse.SHELF,
        row -> {
          if (!row.boneless() || !found.contain(ReservedColumn.ELEMENT)) {
            entries.add(row.entry());
          }
        });
    ProblemReport report = problems.report();
    boolean cellsAlone =
        report.problems().stream()
            .allMatch(p -> p.row().isPresent() && p.column().isPresent() && p.value().isPresent());
    return problems.isEmpty()
            || (cellsAlone && !entries.isEmpty() && report.count() == report.problems().size())
        ? new TableRead<>(new TableEntries(entries, report.problems()), known.protocol(), facts())
        : new TableRefused<>(report);
  }

  private <T> TableOutcome<T> assembled(Function<List<AnimalCard>, T> content) {
    AnimalAssembly assembly = new AnimalAssembly(options, known.shelf(), problems);
    checked(TableUse.SHELF, assembly::add);
    if (problems.isEmpty()
        && options.taxa() == TableOptions.Taxa.NEEDED
        && !found.contain(ReservedColumn.TAXON)) {
      problems.column(
          options.rowOfHeader(),
          "taxon",
          "a shelf needs this column",
          "Add it, or map it by --as taxon=HEADER.");
      return new TableRefused<>(problems.report());
    }
    List<AnimalCard> cards = assembly.cards();
    if (problems.isEmpty()) {
      SlippedValues.note(cards, known).ifPresent(notes::add);
    }
    return problems.isEmpty()
        ? new TableRead<>(content.apply(cards), known.protocol(), facts())
        : new TableRefused<>(problems.report());
  }

  TableOutcome<BoneTable> bones() {
    checked(TableUse.BONES_IN_HAND, row -> {});
    return problems.isEmpty()
        ? new TableRead<>(new BoneTable(this), known.protocol(), facts())
        : new TableRefused<>(problems.report());
  }

  /** The same of bones that need not be measured. */
  TableOutcome<BoneTable> heap() {
    checked(TableUse.HEAP, row -> {});
    return problems.isEmpty()
        ? new TableRead<>(new BoneTable(this), known.protocol(), facts())
        : new TableRefused<>(problems.report());
  }

  private void checked(TableUse use, Consumer<BoneRow> taker) {
    measured = use != TableUse.HEAP;
    try {
      source = TableOpening.rows(path, options, progress, problems);
      if (problems.isEmpty()
          && found.header(rowsOfTable(), use)
          && found.decimalMark(rowsOfTable(), progress, use)) {
        everyRow(taker);
      }
    } catch (IOException unreadable) {
      problems.file(
          "the file can't be read (" + unreadable.getMessage() + ")",
          "Check that you may read it and that its disk is there.");
    }
  }

  private RowSource rowsOfTable() {
    return source.orElseThrow();
  }

  private void everyRow(Consumer<BoneRow> taker) throws IOException {
    UnitDoubts units = new UnitDoubts();
    LongBones together = new LongBones();
    RowReading reading = new RowReading(file, options, known, found.decimal(), found.columns());
    List<String> header = rowsOfTable().header();
    rowsOfTable()
        .eachRow(
            problems,
            (number, cells) -> {
              if (header.equals(cells.stream().map(Cell::text).toList())) {
                problems.row(number, "the header stands here once more", "Take the row out.");
                return;
              }
              List<LongBones.Sighting> seen = new ArrayList<>();
              List<BoneRow> read =
                  reading.read(
                      number,
                      cells,
                      problems,
                      (element, column, value) ->
                          known
                              .range(element, column.code().orElseThrow())
                              .ifPresent(r -> seen.add(new LongBones.Sighting(column, value, r))));
              if (found.isLong()) {
                read.forEach(row -> together.add(row, seen, problems));
              } else {
                take(read, seen, units, taker);
              }
            });
    together.forEach((bone, seen) -> take(List.of(bone), seen, units, taker));
    longColumns = reading.longColumns();
    if (found.layout().startsWith("sheet")) {
      reading.readFromText().ifPresent(notes::add);
    }
    notes.addAll(known.olderNames());
    somethingRead();
    if (options.unitDoubt() != TableOptions.UnitDoubt.TAKE_AS_IS) {
      units.report(options.rowOfHeader(), problems);
    }
  }

  private void take(
      List<BoneRow> read,
      List<LongBones.Sighting> seen,
      UnitDoubts units,
      Consumer<BoneRow> taker) {
    seen.forEach(s -> units.saw(s.column(), s.value(), s.range()));
    units.endOfRow(read.stream().findFirst());
    rows += read.isEmpty() ? 0 : 1;
    read.forEach(
        row -> {
          values += row.values().size();
          taker.accept(row);
        });
  }

  private void somethingRead() {
    if (!problems.isEmpty()) {
      return;
    }
    if (rows == 0) {
      problems.file(
          options
              .element()
              .map(e -> "no row is of the element " + e)
              .orElse("there is no row below the header"),
          "Check that this is the right table.");
    } else if (measured && values == 0) {
      problems.file("no row holds a measurement", "Check that this is the right table.");
    }
  }

  void eachBone(Consumer<BoneInHand> taker) {
    ProblemList now = new ProblemList(file);
    LongBones together = new LongBones();
    RowReading reading = new RowReading(file, options, known, found.decimal(), found.columns());
    try {
      rowsOfTable()
          .eachRow(
              now,
              (number, cells) ->
                  reading
                      .read(number, cells, now, (element, column, value) -> {})
                      .forEach(
                          row -> {
                            if (found.isLong()) {
                              together.add(row, List.of(), now);
                            } else {
                              taker.accept(bone(row));
                            }
                          }));
      together.forEach((row, seen) -> taker.accept(bone(row)));
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(
          file + " can't be read any more (" + unreadable.getMessage() + ").", unreadable);
    }
    if (!now.isEmpty()) {
      throw new IllegalStateException(
          file + " was changed while it was being read. Start again when nobody writes to it.");
    }
  }

  private static BoneInHand bone(BoneRow row) {
    return new BoneInHand(
        row.bone().isEmpty() ? "row " + row.number() : row.bone(),
        row.animal().isEmpty() ? Optional.empty() : Optional.of(new AnimalId(row.animal())),
        row.element(),
        row.side(),
        row.portion(),
        row.state(),
        row.values(),
        row.taxon());
  }

  private TableFacts facts() {
    List<TableColumn> measured =
        found.isLong()
            ? longColumns
            : found.columns().stream().filter(c -> c.code().isPresent()).toList();
    return new TableFacts(
        file,
        found.layout(),
        found.decimal(),
        rows,
        measured.stream().map(c -> new MeasurementCode(c.measured())).toList(),
        measured.stream().map(c -> c.unit().words()).toList(),
        found.notRead(),
        found.mapped(),
        notes);
  }
}
