package org.comparanda.exchange.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.bone.Symmetry;
import org.comparanda.measurement.Protocol;
import org.comparanda.tally.PerSkeleton;
import org.comparanda.tally.ProtocolNumbers;
import org.comparanda.tally.TallyRow;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/** Reads a table of counted bones, all of it or nothing. Form: docs/formats.md. */
public final class CountTableReader {
  private static final List<String> COLUMNS =
      List.of("taxon", "element", "side", "portion", "place", "count", "per_skeleton");

  private final Path path;
  private final KnownWords known;
  private final TableOptions options;
  private final Protocol protocol;
  private final ProblemList problems;
  private final Map<String, Integer> where = new HashMap<>();
  private final Set<String> mapped = new HashSet<>();
  private final List<String> notRead = new ArrayList<>();
  private final List<TallyRow> rows = new ArrayList<>();
  private final Map<ProtocolNumbers.Bone, Integer> told = new LinkedHashMap<>();

  private CountTableReader(Path path, Protocol protocol, TaxonTree tree, TableOptions options) {
    this.path = path;
    this.protocol = protocol;
    this.options = options;
    known = new KnownWords(protocol, tree, Optional.empty());
    problems = new ProblemList(String.valueOf(path.getFileName()));
  }

  /** The table, or the report of every problem in it. */
  public static TableOutcome<CountTable> read(
      Path table, Protocol protocol, TaxonTree tree, TableOptions options) {
    return new CountTableReader(table, protocol, tree, options).read();
  }

  private TableOutcome<CountTable> read() {
    String layout = "";
    try {
      Optional<RowSource> opened =
          TableOpening.rows(path, options.sheet(), ReadingProgress.unwatched(), problems);
      if (opened.isPresent()) {
        RowSource file = opened.get();
        layout = file.layout();
        header(file.header());
        if (problems.isEmpty()) {
          file.eachRow(problems, this::row);
        }
      }
    } catch (IOException unreadable) {
      problems.file(
          "the file can't be read (" + unreadable.getMessage() + ")",
          "Check that you may read it and that its disk is there.");
    }
    if (problems.isEmpty() && rows.isEmpty()) {
      problems.file("there is no row below the header", "Check that this is the right table.");
    }
    return problems.isEmpty()
        ? new TableRead<>(content(layout), known.protocol(), facts(layout))
        : new TableRefused<>(problems.report());
  }

  private CountTable content(String layout) {
    Map<ProtocolNumbers.Bone, PerSkeleton.Occurrence> numbers = new LinkedHashMap<>();
    told.forEach((bone, n) -> numbers.put(bone, new PerSkeleton.Occurrence(n, symmetry(bone))));
    return new CountTable(rows, numbers, facts(layout));
  }

  /** As the protocol has it; a registered element is sided when any of its bones was sided. */
  private Symmetry symmetry(ProtocolNumbers.Bone bone) {
    return protocol
        .element(bone.element())
        .map(Element::symmetry)
        .orElseGet(
            () ->
                rows.stream()
                        .filter(r -> r.element().equals(bone.element()))
                        .anyMatch(r -> r.side() == Side.LEFT || r.side() == Side.RIGHT)
                    ? Symmetry.SIDED
                    : Symmetry.AXIAL);
  }

  private TableFacts facts(String layout) {
    return new TableFacts(
        String.valueOf(path.getFileName()),
        layout,
        DecimalMark.POINT,
        rows.size(),
        List.of(),
        List.of(),
        notRead,
        mapped,
        List.of());
  }

  private void header(List<String> header) {
    for (int i = 0; i < header.size(); i++) {
      String name = header.get(i);
      List<String> roles = new ArrayList<>();
      options.as().forEach((role, wanted) -> addIf(wanted.equals(name), roles, role));
      mapped.addAll(roles);
      if (roles.isEmpty() && !options.as().containsKey(name.toLowerCase(java.util.Locale.ROOT))) {
        roles.add(name.toLowerCase(java.util.Locale.ROOT));
      }
      for (String role : roles) {
        if (COLUMNS.contains(role) && where.putIfAbsent(role, i) != null) {
          problems.column(
              1,
              name,
              "two columns stand for " + role,
              "Take one out, or say by --as " + role + "=HEADER which one counts.");
        } else if (!COLUMNS.contains(role)) {
          otherColumn(name, role);
        }
      }
    }
    needed("taxon");
    if (options.element().isEmpty()) {
      needed("element");
    }
  }

  private static void addIf(boolean matches, List<String> roles, String role) {
    if (matches) {
      roles.add(role);
    }
  }

  private void needed(String column) {
    if (!where.containsKey(column) && problems.isEmpty()) {
      problems.column(
          1,
          column,
          "a table of counts needs this column",
          "Add it, or map it by --as " + column + "=HEADER.");
    }
  }

  private void otherColumn(String header, String role) {
    boolean readElsewhere =
        ReservedColumn.ofHeader(role).isPresent()
            || known.codeNames().contains(header.replaceFirst("\\s*\\[.*", ""));
    if (readElsewhere
        || !options.only().isEmpty()
        || options.unknown() == TableOptions.Unknown.REGISTER) {
      notRead.add(header);
    } else {
      Set<String> names = new TreeSet<>(COLUMNS);
      names.addAll(ReservedColumn.headers());
      problems.column(
          1,
          header,
          "no column of this name is known",
          NearestName.to(role, names).map(n -> "The nearest is " + n + ". ").orElse("")
              + "Correct the header, map it by --as NAME="
              + header
              + ", or let it be passed over by --register.");
    }
  }

  private void row(long number, List<Cell> cells) {
    Optional<ElementKey> element = element(number, cells);
    Optional<TaxonName> taxon = taxon(number, cells);
    int count = whole(number, "count", cells).orElse(1);
    Optional<Integer> perSkeleton = whole(number, "per_skeleton", cells);
    if (element.isEmpty() || taxon.isEmpty()) {
      return;
    }
    BoneWords words = new BoneWords(problems);
    Side unsided = known.symmetry(element.get()) == Symmetry.AXIAL ? Side.AXIAL : Side.NOT_KNOWN;
    Side side = words.side(number, "side", text("side", cells)).orElse(unsided);
    Portion portion =
        words.portion(number, "portion", text("portion", cells)).orElse(Portion.WHOLE);
    rows.add(new TallyRow(text("place", cells), taxon.get(), element.get(), side, portion, count));
    perSkeleton.ifPresent(n -> tell(number, taxon.get(), element.get(), n));
  }

  private void tell(long row, TaxonName taxon, ElementKey element, int number) {
    Integer before = told.putIfAbsent(new ProtocolNumbers.Bone(taxon, element), number);
    if (before != null && before != number) {
      problems.cell(
          row,
          "per_skeleton",
          String.valueOf(number),
          "an earlier row gives " + before + " for " + element + " of " + taxon,
          "Give one number for one element of one taxon.");
    }
  }

  private Optional<ElementKey> element(long row, List<Cell> cells) {
    String cell = text("element", cells);
    if (cell.isEmpty() && options.element().isPresent()) {
      return options.element();
    }
    return name(row, "element", cell, known.elementNames())
        .map(ElementKey::new)
        .filter(this::taken);
  }

  /** Registers what is new; keeps to the picked element where one was picked. */
  private boolean taken(ElementKey element) {
    known.register(element, String.valueOf(path.getFileName()));
    return options.element().map(element::equals).orElse(true);
  }

  private Optional<TaxonName> taxon(long row, List<Cell> cells) {
    return name(row, "taxon", text("taxon", cells), known.taxonNames()).map(TaxonName::new);
  }

  private Optional<String> name(long row, String column, String cell, List<String> names) {
    if (cell.isEmpty()) {
      problems.row(row, "the " + column + " is missing", "Fill the cell, or take the row out.");
      return Optional.empty();
    }
    if (!names.contains(cell) && options.unknown() == TableOptions.Unknown.REFUSE) {
      problems.cell(
          row,
          column,
          cell,
          "no " + column + " of this name is known",
          NearestName.to(cell, names).map(n -> "The nearest is " + n + ". ").orElse("")
              + "Correct the name, or let the table bring it by --register.");
      return Optional.empty();
    }
    return Optional.of(cell);
  }

  private Optional<Integer> whole(long row, String column, List<Cell> cells) {
    String cell = text(column, cells);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble value = NumberText.read(cell, DecimalMark.POINT);
    if (value.isPresent()
        && value.getAsDouble() >= 1
        && value.getAsDouble() <= Integer.MAX_VALUE
        && value.getAsDouble() == Math.rint(value.getAsDouble())) {
      return Optional.of((int) value.getAsDouble());
    }
    problems.cell(
        row, column, cell, "not a whole number from 1 on", "Correct the cell, or leave it empty.");
    return Optional.empty();
  }

  private String text(String column, List<Cell> cells) {
    Integer index = where.get(column);
    return index == null ? "" : cells.get(index).orEmpty();
  }
}
