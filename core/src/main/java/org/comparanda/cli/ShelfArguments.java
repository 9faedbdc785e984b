package org.comparanda.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.exchange.table.RulesTable;
import org.comparanda.exchange.table.TableFacts;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.house.RulesInForce;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Shelf;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which shelf a command works on: a stored collection or a table. */
final class ShelfArguments {
  @Option(
      names = "--collection",
      paramLabel = "FILE",
      description = "Stored collection, ending in .comparanda.")
  private @Nullable Path collection;

  @Option(
      names = "--shelf",
      paramLabel = "TABLE",
      description = "A table (CSV) as the shelf, without storing it.")
  private @Nullable Path table;

  @Option(
      names = "--rules",
      paramLabel = "TABLE",
      description =
          "A table (CSV) with the columns rule,value: rules that hold for this run in place of"
              + " those of the house, e.g. one-share,0.9.")
  private @Nullable Path rules;

  /** A shelf, the words that go with it, and how its table was read. */
  record Opened(
      Shelf shelf,
      Protocol protocol,
      ReferenceTables tables,
      Optional<TableFacts> facts,
      RulesInForce rules) {
    /** With the bones of one element alone, where one is named. */
    Opened of(Optional<ElementKey> element) {
      return element
          .map(e -> new Opened(KnownElement.on(shelf, protocol, e), protocol, tables, facts, rules))
          .orElse(this);
    }

    List<TableFacts> factsAnd(TableFacts other) {
      return facts.map(f -> List.of(f, other)).orElse(List.of(other));
    }
  }

  /** The stored collection, where one was named. */
  Optional<Path> collection() {
    return Optional.ofNullable(collection);
  }

  /** The reference tables with the names of the collection, where one was named. */
  ReferenceTables words(Terminal terminal) {
    if (collection == null) {
      return ReferenceTables.shipped();
    }
    try (Collection opened = Collection.open(collection, terminal.clock())) {
      return HouseTables.of(opened);
    }
  }

  Opened open(Terminal terminal, TableOptions options) {
    ReferenceTables tables = ReferenceTables.shipped();
    if ((collection == null) == (table == null)) {
      throw new CannotDo(
          "Say either --collection FILE or --shelf TABLE. Nothing was done: there is "
              + (table == null ? "no shelf" : "more than one shelf")
              + " to compare with.");
    }
    return table == null ? stored(terminal) : read(terminal, tables, options, table);
  }

  private Opened stored(Terminal terminal) {
    try (Collection opened =
        Collection.open(java.util.Objects.requireNonNull(collection), terminal.clock())) {
      opened.caution().ifPresent(terminal::note);
      ReferenceTables tables = HouseTables.of(opened);
      return new Opened(
          opened.animals().shelf(),
          tables.protocol(),
          tables,
          Optional.empty(),
          ruled(opened.houseRules().inForce()));
    }
  }

  /** The rules of the house with those of the table named, if any, in their place. */
  private RulesInForce ruled(RulesInForce house) {
    return rules == null
        ? house
        : RulesTable.read(rules, house)
            .fold(
                r -> r,
                none -> {
                  throw new CannotDo(none.reason() + "\n" + none.remedy());
                });
  }

  private Opened read(Terminal terminal, ReferenceTables tables, TableOptions options, Path table) {
    TableRead<Shelf> read = table(terminal, tables, options, table);
    return new Opened(
        read.content(),
        read.protocol(),
        tables,
        Optional.of(read.facts()),
        ruled(RulesInForce.withDefaults()));
  }

  /** Reads a table as a shelf, says how it was read, or refuses it with every problem. */
  static TableRead<Shelf> table(
      Terminal terminal, ReferenceTables tables, TableOptions options, Path table) {
    return TableReader.of(tables.protocol(), tables.taxa(), options)
        .watchedBy(new ProgressLine(terminal, table))
        .shelf(table)
        .fold(
            read -> {
              terminal.note(read.facts().sentence());
              return read;
            },
            report -> {
              throw new CannotDo(report.lines());
            });
  }
}
