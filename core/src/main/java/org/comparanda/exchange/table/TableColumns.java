package org.comparanda.exchange.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the columns of a table are: by its header, and by a first look through its numbers. */
final class TableColumns {
  /** A shelf is kept in memory; a longer table is not one. */
  private static final long MOST_SHELF_ROWS = 500_000;

  private final String file;
  private final TableOptions options;
  private final KnownWords known;
  private final ProblemList problems;

  private String layout = "";
  private TableOptions.Shape shape = TableOptions.Shape.WIDE;
  private DecimalMark decimal = DecimalMark.POINT;
  private List<TableColumn> columns = List.of();
  private List<String> notRead = List.of();
  private Set<String> mapped = Set.of();

  TableColumns(String file, TableOptions options, KnownWords known, ProblemList problems) {
    this.file = file;
    this.options = options;
    this.known = known;
    this.problems = problems;
  }

  String layout() {
    return layout;
  }

  boolean isLong() {
    return shape == TableOptions.Shape.LONG;
  }

  DecimalMark decimal() {
    return decimal;
  }

  List<TableColumn> columns() {
    return columns;
  }

  List<String> notRead() {
    return notRead;
  }

  Set<String> mapped() {
    return mapped;
  }

  boolean contain(ReservedColumn column) {
    return columns.stream().anyMatch(c -> c.reserved().equals(Optional.of(column)));
  }

  /** Matches the header row; false when the rows below can't be read by it. */
  boolean header(RowSource source, TableUse use) throws IOException {
    layout = source.layout();
    List<String> header = source.header();
    if (header.isEmpty()) {
      problems.file(
          "there is no header row that can be read", "Save the table again, with a header row.");
      return false;
    }
    Optional<TitleRows> title = TitleRows.above(source, header, options, known, Map.of());
    if (title.isPresent()) {
      problems.row(1, title.get().sentence(), title.get().remedy());
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
    if (use == TableUse.SHELF && shape == TableOptions.Shape.WIDE) {
      matching.needPicked(header);
    }
    columns = matching.columns();
    notRead = matching.notRead();
    mapped = matching.mapped();
    if (shape == TableOptions.Shape.LONG) {
      return has(ReservedColumn.MEASUREMENT) && has(ReservedColumn.VALUE);
    }
    if (use != TableUse.HEAP && columns.stream().noneMatch(c -> c.code().isPresent())) {
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
    boolean there = contain(column);
    if (!there) {
      problems.column(
          options.rowOfHeader(),
          column.header(),
          "a long table, one reading a row, needs this column",
          "Add it, or map it by --as " + column.header() + "=HEADER.");
    }
    return there;
  }

  /** Finds the decimal mark; false when it can't be told. */
  boolean decimalMark(RowSource source, ReadingProgress progress, TableUse use) throws IOException {
    DecimalScan scan = new DecimalScan(columns.stream().filter(TableColumn::numeric).toList());
    ProblemList first = new ProblemList(file);
    long[] count = {0};
    source
        .watchedBy(progress.unsaid())
        .eachRow(
            first,
            (row, cells) -> {
              count[0]++;
              scan.row(row, cells);
            });
    if (use == TableUse.SHELF && count[0] > MOST_SHELF_ROWS) {
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
            options.rowOfHeader(),
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
}
