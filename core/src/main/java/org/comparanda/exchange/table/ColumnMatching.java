package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.measurement.MeasurementCode;

/** Decides for each header of a table whether it is read, and as what. */
final class ColumnMatching {
  private static final Pattern WITH_UNIT =
      Pattern.compile("(.*?)\\s*(?:\\[([^\\]]*)\\]|\\((mm|cm|m|in|g|kg|mg)\\))");
  private final TableOptions options;
  private final KnownWords known;
  private final ProblemList problems;
  private final List<TableColumn> columns = new ArrayList<>();
  private final List<String> notRead = new ArrayList<>();
  private final Set<String> mapped = new LinkedHashSet<>();
  private final Map<String, String> takenBy = new HashMap<>();

  /** What a picked body_length or body_mass is: a number of the row, or of the whole animal. */
  private enum BodyColumns {
    PLAIN_WHERE_PICKED,
    OF_THE_ANIMAL
  }

  private BodyColumns bodyColumns = BodyColumns.OF_THE_ANIMAL;
  private TableOptions.Shape shape = TableOptions.Shape.WIDE;

  /** A header cut into its name and the unit in brackets behind it. */
  private record Header(int index, String whole, String name, Optional<String> unit) {}

  ColumnMatching(TableOptions options, KnownWords known, ProblemList problems) {
    this.options = options;
    this.known = known;
    this.problems = problems;
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

  /** Wide or long: as told, otherwise long where the header has a measurement and a value. */
  TableOptions.Shape shape() {
    return shape;
  }

  void match(List<String> headerRow) {
    List<Header> headers = new ArrayList<>();
    for (int i = 0; i < headerRow.size(); i++) {
      headers.add(cut(i, headerRow.get(i)));
    }
    for (Header header : headers) {
      options
          .as()
          .forEach(
              (role, wanted) -> {
                if (wanted.equals(header.name()) || wanted.equals(header.whole())) {
                  mapped.add(role);
                }
              });
    }
    boolean oneElement =
        headers.stream().noneMatch(h -> h.name().equalsIgnoreCase("element"))
            && !mapped.contains("element");
    bodyColumns = oneElement ? BodyColumns.PLAIN_WHERE_PICKED : BodyColumns.OF_THE_ANIMAL;
    shape =
        options.shape() != TableOptions.Shape.BY_HEADER
            ? options.shape()
            : isThere(headers, ReservedColumn.MEASUREMENT) && isThere(headers, ReservedColumn.VALUE)
                ? TableOptions.Shape.LONG
                : TableOptions.Shape.WIDE;
    headers.forEach(this::match);
  }

  private boolean isThere(List<Header> headers, ReservedColumn column) {
    return mapped.contains(column.header())
        || headers.stream()
            .anyMatch(
                h ->
                    h.name().equalsIgnoreCase(column.header())
                        && !options.only().contains(h.name())
                        && !options.aside().contains(h.whole()));
  }

  private static Header cut(int index, String whole) {
    Matcher unit = WITH_UNIT.matcher(whole);
    return unit.matches()
        ? new Header(
            index,
            whole,
            unit.group(1),
            Optional.of(unit.group(unit.group(2) == null ? 3 : 2).strip()))
        : new Header(index, whole, whole, Optional.empty());
  }

  private void match(Header header) {
    List<String> roles =
        options.as().entrySet().stream()
            .filter(e -> e.getValue().equals(header.name()) || e.getValue().equals(header.whole()))
            .map(Map.Entry::getKey)
            .toList();
    if (header.name().isEmpty()) {
      problems.row(
          options.rowOfHeader(),
          "column " + (header.index() + 1) + " has no name",
          "Give it one, or take the column out.");
    } else if (options.aside().contains(header.whole())
        || options.aside().contains(header.name())) {
      notRead.add(header.whole());
    } else if (!roles.isEmpty()) {
      roles.forEach(role -> take(header, role));
    } else if (mapped.contains(header.name())) {
      notRead.add(header.whole()); // another header was named for this role
    } else {
      take(header, header.name());
    }
  }

  private void take(Header header, String role) {
    Optional<ReservedColumn> reserved =
        shape == TableOptions.Shape.LONG
            ? ReservedColumn.ofLongHeader(role)
            : ReservedColumn.ofHeader(role);
    ColumnSubject subject = ColumnSubject.of(role, known);
    boolean picked =
        options.only().contains(header.name())
            || options.only().stream().anyMatch(o -> ColumnSubject.of(o, known).meets(subject));
    if (reserved.isPresent() && takes(header, reserved.get().header())) {
      ReservedColumn column = reserved.get();
      if (picked && (!column.numeric() || bodyColumns == BodyColumns.PLAIN_WHERE_PICKED)) {
        add(header, new MeasurementCode(role));
      } else {
        add(header, column, reservedUnit(header, column));
      }
    } else if (reserved.isEmpty()) {
      takeMeasurement(header, subject, picked);
    }
  }

  private void takeMeasurement(Header header, ColumnSubject subject, boolean picked) {
    if (shape == TableOptions.Shape.LONG) {
      besideLong(header, subject);
    } else if ((!options.only().isEmpty() && !picked) || ofAnotherElement(subject)) {
      notRead.add(header.whole());
    } else if (!isKnown(subject) && options.unknown() == TableOptions.Unknown.REFUSE) {
      unknown(header, subject);
    } else if (takes(header, subject.name())) {
      add(header, subject, lengthUnit(header, subject.code()));
    }
  }

  /** In a long table no column is a measurement of its own. */
  private void besideLong(Header header, ColumnSubject subject) {
    if (!options.only().isEmpty() || options.unknown() == TableOptions.Unknown.REGISTER) {
      notRead.add(header.whole());
    } else {
      unknown(header, subject);
    }
  }

  /** Where one element is picked, the columns of the others are left aside. */
  private boolean ofAnotherElement(ColumnSubject subject) {
    if (options.element().isEmpty()) {
      return false;
    }
    if (subject.element().isPresent()) {
      return !subject.element().equals(options.element());
    }
    return bodyColumns == BodyColumns.OF_THE_ANIMAL
        && known.knowsCode(subject.code())
        && !isKnown(subject);
  }

  private boolean isKnown(ColumnSubject subject) {
    MeasurementCode code = subject.code();
    return subject
        .element()
        .or(options::element)
        .filter(known::knows)
        .map(e -> known.knows(e, code))
        .orElseGet(() -> known.knowsCode(code));
  }

  /** Every measurement that was picked must be there on a shelf. */
  void needPicked(List<String> headerRow) {
    for (String name : options.only()) {
      ColumnSubject subject = ColumnSubject.of(name, known);
      boolean there =
          columns.stream()
              .anyMatch(
                  c ->
                      c.code().filter(code -> subject.meets(c.subject())).isPresent()
                          || cut(0, c.header()).name().equals(name)
                          || c.reserved()
                              .map(ReservedColumn::header)
                              .filter(name::equals)
                              .isPresent());
      if (!there && headerRow.stream().noneMatch(h -> cut(0, h).name().equals(name))) {
        problems.column(
            options.rowOfHeader(),
            name,
            "the table has no such column",
            NearestName.to(name, headerRow).map(n -> "The nearest is " + n + ". ").orElse("")
                + "Correct the name, or map it by --as "
                + name
                + "=HEADER.");
      }
    }
  }

  private void unknown(Header header, ColumnSubject subject) {
    List<String> names = new ArrayList<>(ReservedColumn.headers());
    names.addAll(
        subject.element().or(options::element).map(known::codeNames).orElseGet(known::codeNames));
    problems.unknownName(
        options.rowOfHeader(),
        header.whole(),
        Optional.empty(),
        "no column or measurement of this name is known",
        NearestName.to(subject.code().value(), names)
                .map(n -> "The nearest is " + n + ". ")
                .orElse("")
            + "Correct the header, map it by --as NAME="
            + header.name()
            + ", pick columns by --only, leave it aside by --leave "
            + header.name()
            + ", or let the table bring it by --register.");
  }

  private boolean takes(Header header, String role) {
    String before = takenBy.putIfAbsent(role, header.whole());
    if (before != null) {
      problems.column(
          options.rowOfHeader(),
          header.whole(),
          "two columns stand for " + role + ", the other is " + before,
          "Take one out, or say by --as " + role + "=HEADER which one counts.");
    }
    return before == null;
  }

  private ColumnUnit reservedUnit(Header header, ReservedColumn column) {
    return switch (column) {
      case BODY_LENGTH -> lengthUnit(header, new MeasurementCode(column.header()));
      case BODY_MASS -> header.unit().map(u -> massUnit(header, u)).orElse(ColumnUnit.none());
      default -> ColumnUnit.none();
    };
  }

  private ColumnUnit massUnit(Header header, String symbol) {
    return ColumnUnit.ofMass(symbol).orElseGet(() -> unknownUnit(header, symbol, "g, kg or mg"));
  }

  private ColumnUnit lengthUnit(Header header, MeasurementCode code) {
    LengthUnit told = options.units().get(code.value());
    if (told == null) {
      told = options.units().get(header.name());
    }
    if (told != null) {
      return ColumnUnit.of(told, ColumnUnit.SaidBy.PERSON);
    }
    if (header.unit().isPresent()) {
      String symbol = header.unit().get();
      return LengthUnit.ofSymbol(symbol)
          .map(u -> ColumnUnit.of(u, ColumnUnit.SaidBy.HEADER))
          .orElseGet(() -> unknownUnit(header, symbol, "mm, cm, m or in"));
    }
    if (options.unit().isPresent()) {
      return ColumnUnit.of(options.unit().get(), ColumnUnit.SaidBy.PERSON);
    }
    return known.protocolHas(code) || ReservedColumn.ofHeader(code.value()).isPresent()
        ? ColumnUnit.of(LengthUnit.MILLIMETRE, ColumnUnit.SaidBy.NOBODY)
        : ColumnUnit.none();
  }

  private ColumnUnit unknownUnit(Header header, String symbol, String units) {
    problems.cell(
        options.rowOfHeader(),
        header.whole(),
        symbol,
        "not a unit",
        "Write " + units + " in the brackets, or say it by --unit " + header.name() + "=UNIT.");
    return new ColumnUnit(1, Optional.of(symbol), ColumnUnit.SaidBy.PERSON); // one report is enough
  }

  private void add(Header header, ReservedColumn reserved, ColumnUnit unit) {
    columns.add(
        new TableColumn(
            header.index(),
            header.whole(),
            Optional.of(reserved),
            Optional.empty(),
            Optional.empty(),
            unit));
  }

  private void add(Header header, MeasurementCode plainNumber) {
    add(header, new ColumnSubject(Optional.empty(), plainNumber), ColumnUnit.none());
  }

  private void add(Header header, ColumnSubject subject, ColumnUnit unit) {
    columns.add(
        new TableColumn(
            header.index(),
            header.whole(),
            Optional.empty(),
            subject.element(),
            Optional.of(subject.code()),
            unit));
  }
}
