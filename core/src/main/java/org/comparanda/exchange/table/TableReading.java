package org.comparanda.exchange.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
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
  /** A shelf is kept in memory; a longer table is not one. */
  private static final long MOST_SHELF_ROWS = 500_000;

  private final Path path;
  private final String file;
  private final TableOptions options;
  private final KnownWords known;
  private final ReadingProgress progress;
  private final ProblemList problems;

  private String layout = "";
  private TableOptions.Shape shape = TableOptions.Shape.WIDE;
  private List<TableColumn> longColumns = List.of();
  private Optional<RowSource> source = Optional.empty();
  private DecimalMark decimal = DecimalMark.POINT;
  private List<TableColumn> columns = List.of();
  private List<String> notRead = List.of();
  private Set<String> mapped = Set.of();
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
        Use.SHELF,
        row -> {
          boolean elementsAreNamed =
              columns.stream()
                  .anyMatch(c -> c.reserved().equals(Optional.of(ReservedColumn.ELEMENT)));
          if (!row.boneless() || !elementsAreNamed) {
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

  TableOutcome<TablePreview> preview() {
    List<List<String>> first = new ArrayList<>();
    List<String> header = new ArrayList<>();
    try {
      source = TableOpening.rows(path, options.sheet(), progress, problems);
      if (source.isPresent()) {
        layout = rowsOfTable().layout();
        header.addAll(rowsOfTable().header());
        firstRows(first);
      }
    } catch (IOException unreadable) {
      problems.file("the file can't be read", "Check that you may read it.");
    }
    if (header.isEmpty() && problems.isEmpty()) {
      problems.file("there is no header row", "Save the table again, with a header row.");
    }
    if (header.isEmpty()) {
      return new TableRefused<>(problems.report());
    }
    boolean tall =
        switch (options.shape()) {
          case LONG -> true;
          case WIDE -> false;
          case BY_HEADER ->
              new ColumnGuesses(known, TableOptions.Shape.LONG)
                  .of(header).stream()
                      .flatMap(g -> g.role().stream())
                      .toList()
                      .containsAll(List.of("measurement", "value"));
        };
    shape = tall ? TableOptions.Shape.LONG : TableOptions.Shape.WIDE;
    List<String> roles = new ArrayList<>();
    for (ReservedColumn column : ReservedColumn.values()) {
      if (tall || !column.ofLongTables()) {
        roles.add(column.header());
      }
    }
    if (!tall) {
      known.codeNames().stream().distinct().forEach(roles::add);
    }
    return new TableRead<>(
        new TablePreview(layout, new ColumnGuesses(known, shape).of(header), first, roles),
        known.protocol(),
        facts());
  }

  /** Only the first rows are wanted; the rest of the file is not read. */
  private void firstRows(List<List<String>> first) throws IOException {
    ProblemList aside = new ProblemList(file);
    ReadingProgress enough =
        new ReadingProgress() {
          @Override
          public void read(long bytes, long ofBytes) {}

          @Override
          public boolean cancelled() {
            return first.size() >= TablePreview.ROWS || progress.cancelled();
          }
        };
    try {
      rowsOfTable()
          .watchedBy(enough)
          .eachRow(aside, (number, cells) -> first.add(cells.stream().map(Cell::text).toList()));
    } catch (CancellationException hadEnough) {
      if (progress.cancelled()) {
        throw hadEnough;
      }
    }
  }

  private <T> TableOutcome<T> assembled(Function<List<AnimalCard>, T> content) {
    AnimalAssembly assembly = new AnimalAssembly(options, known.shelf(), problems);
    checked(Use.SHELF, assembly::add);
    if (problems.isEmpty()
        && options.taxa() == TableOptions.Taxa.NEEDED
        && columns.stream()
            .noneMatch(c -> c.reserved().equals(Optional.of(ReservedColumn.TAXON)))) {
      problems.column(
          1, "taxon", "a shelf needs this column", "Add it, or map it by --as taxon=HEADER.");
      return new TableRefused<>(problems.report());
    }
    List<AnimalCard> cards = assembly.cards();
    return problems.isEmpty()
        ? new TableRead<>(content.apply(cards), known.protocol(), facts())
        : new TableRefused<>(problems.report());
  }

  TableOutcome<BoneTable> bones() {
    checked(Use.BONES_IN_HAND, row -> {});
    return problems.isEmpty()
        ? new TableRead<>(new BoneTable(this), known.protocol(), facts())
        : new TableRefused<>(problems.report());
  }

  /** The same of bones that need not be measured. */
  TableOutcome<BoneTable> heap() {
    checked(Use.HEAP, row -> {});
    return problems.isEmpty()
        ? new TableRead<>(new BoneTable(this), known.protocol(), facts())
        : new TableRefused<>(problems.report());
  }

  private void checked(Use use, Consumer<BoneRow> taker) {
    measured = use != Use.HEAP;
    try {
      source = TableOpening.rows(path, options.sheet(), progress, problems);
      if (problems.isEmpty() && header(use) && decimalMark(use)) {
        everyRow(taker);
      }
    } catch (IOException unreadable) {
      problems.file(
          "the file can't be read (" + unreadable.getMessage() + ")",
          "Check that you may read it and that its disk is there.");
    }
  }

  /** What the table is read as. */
  private enum Use {
    SHELF,
    BONES_IN_HAND,
    HEAP
  }

  private RowSource rowsOfTable() {
    return source.orElseThrow();
  }

  private boolean header(Use use) throws IOException {
    layout = rowsOfTable().layout();
    List<String> header = rowsOfTable().header();
    if (header.isEmpty()) {
      problems.file(
          "there is no header row that can be read", "Save the table again, with a header row.");
      return false;
    }
    options
        .element()
        .filter(e -> !known.knows(e))
        .ifPresent(
            e -> {
              if (options.unknown() == TableOptions.Unknown.REFUSE) {
                problems.file(
                    "no element \"" + e + "\" is known",
                    NearestName.to(e.value(), known.elementNames())
                            .map(n -> "The nearest is " + n + ". ")
                            .orElse("")
                        + "Correct --element, or register it by --register.");
              }
              known.register(e, file);
            });
    ColumnMatching matching = new ColumnMatching(options, known, problems);
    matching.match(header);
    shape = matching.shape();
    if (use == Use.SHELF && shape == TableOptions.Shape.WIDE) {
      matching.needPicked(header);
    }
    columns = matching.columns();
    notRead = matching.notRead();
    mapped = matching.mapped();
    if (shape == TableOptions.Shape.LONG) {
      return has(ReservedColumn.MEASUREMENT) && has(ReservedColumn.VALUE);
    }
    if (measured && columns.stream().noneMatch(c -> c.code().isPresent())) {
      problems.file(
          "no column holds a measurement",
          "Head a column with a code of the protocol, or say by --register that the table brings"
              + " its own.");
      return false;
    }
    return true;
  }

  /** What a long table can't do without. */
  private boolean has(ReservedColumn column) {
    boolean there = columns.stream().anyMatch(c -> c.reserved().equals(Optional.of(column)));
    if (!there) {
      problems.column(
          1,
          column.header(),
          "a long table, one reading a row, needs this column",
          "Add it, or map it by --as " + column.header() + "=HEADER.");
    }
    return there;
  }

  private boolean decimalMark(Use use) throws IOException {
    DecimalScan scan = new DecimalScan(columns.stream().filter(TableColumn::numeric).toList());
    ProblemList first = new ProblemList(file);
    long[] count = {0};
    rowsOfTable()
        .watchedBy(progress.unsaid())
        .eachRow(
            first,
            (row, cells) -> {
              count[0]++;
              scan.row(row, cells);
            });
    if (use == Use.SHELF && count[0] > MOST_SHELF_ROWS) {
      problems.file(
          "the table has "
              + count[0]
              + " rows, more than a shelf may have ("
              + MOST_SHELF_ROWS
              + ")",
          "Split it, or pick the rows of one element.");
      return false;
    }
    ProblemList doubt = new ProblemList(file);
    decimal = scan.mark(options, doubt);
    if (!doubt.isEmpty()) {
      doubt.report().problems().forEach(problems::add);
      first.report().problems().forEach(problems::add);
      return false;
    }
    List<TableColumn> readable = new ArrayList<>();
    for (TableColumn column : columns) {
      if (column.code().filter(c -> !known.protocolHas(c)).isPresent()
          && scan.holdsNoNumber(column)) {
        problems.column(
            1,
            column.header(),
            "no cell of this column is a number",
            "Pick the measurement columns by --only, or take this one out.");
      } else {
        readable.add(column);
      }
    }
    columns = readable;
    return true;
  }

  private void everyRow(Consumer<BoneRow> taker) throws IOException {
    UnitDoubts units = new UnitDoubts();
    LongBones together = new LongBones();
    RowReading reading = new RowReading(file, options, known, decimal, columns);
    rowsOfTable()
        .eachRow(
            problems,
            (number, cells) -> {
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
              if (shape == TableOptions.Shape.LONG) {
                read.forEach(row -> together.add(row, seen, problems));
              } else {
                take(read, seen, units, taker);
              }
            });
    together.forEach((bone, seen) -> take(List.of(bone), seen, units, taker));
    longColumns = reading.longColumns();
    if (layout.startsWith("sheet")) {
      reading.readFromText().ifPresent(notes::add);
    }
    somethingRead();
    if (options.unitDoubt() != TableOptions.UnitDoubt.TAKE_AS_IS) {
      units.report(problems);
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
    RowReading reading = new RowReading(file, options, known, decimal, columns);
    try {
      rowsOfTable()
          .eachRow(
              now,
              (number, cells) ->
                  reading
                      .read(number, cells, now, (element, column, value) -> {})
                      .forEach(
                          row -> {
                            if (shape == TableOptions.Shape.LONG) {
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
        shape == TableOptions.Shape.LONG
            ? longColumns
            : columns.stream().filter(c -> c.code().isPresent()).toList();
    return new TableFacts(
        file,
        layout,
        decimal,
        rows,
        measured.stream().map(c -> new MeasurementCode(c.measured())).toList(),
        measured.stream().map(c -> c.unit().words()).toList(),
        notRead,
        mapped,
        notes);
  }
}
