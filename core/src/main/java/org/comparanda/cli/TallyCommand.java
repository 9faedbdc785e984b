package org.comparanda.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.comparanda.exchange.json.TallyJson;
import org.comparanda.exchange.table.CountTable;
import org.comparanda.exchange.table.CountTableReader;
import org.comparanda.measurement.Protocol;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tables.SkeletonGroups;
import org.comparanda.tally.CalledBones;
import org.comparanda.tally.PerSkeleton;
import org.comparanda.tally.PlaceTally;
import org.comparanda.tally.ProtocolNumbers;
import org.comparanda.tally.Tally;
import org.comparanda.tally.TallyRow;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Counts specimens, elements and animals of a table or of a collection's calls. */
@Command(
    name = "tally",
    description = {
      "Count NISP, MNE, MAU and MNI, within each place, with every step on show.",
      "A table has the columns taxon, element, side, portion, place, count (1 when absent) and",
      "per_skeleton. A collection is counted by the present calls on its bones; MNI is refused",
      "across lots that share no place."
    },
    mixinStandardHelpOptions = true)
final class TallyCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(arity = "0..1", paramLabel = "TABLE", description = "CSV, one row per count.")
  private @Nullable Path table;

  @Option(names = "--collection", paramLabel = "FILE", description = "A stored collection.")
  private @Nullable Path collection;

  @Option(names = "--lot", split = ",", paramLabel = "LOT", description = "Only these lots.")
  private List<String> lots = List.of();

  @Option(names = "--together", description = "You say that the table's places are one.")
  private boolean together;

  @Mixin private TableArguments tables = new TableArguments();
  @Mixin private JsonArgument json = new JsonArgument();

  TallyCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    if (table != null && collection == null) {
      return ofTable(table);
    }
    if (collection != null && table == null && !together) {
      return ofCollection(collection);
    }
    throw new CannotDo(
        "Say either a TABLE (with or without --together) or --collection FILE. Nothing was"
            + " counted.");
  }

  private int ofTable(Path file) throws IOException {
    ReferenceTables words = ReferenceTables.shipped();
    return CountTableReader.read(file, words.protocol(), words.taxa(), tables.options())
        .fold(
            read -> counted(words, read.protocol(), read.content()),
            report -> {
              throw new CannotDo(report.lines());
            })
        .write();
  }

  private Result counted(ReferenceTables words, Protocol protocol, CountTable read) {
    tables.everyMappingFound(List.of(read.facts()));
    if (!read.facts().notRead().isEmpty()) {
      terminal.note("Not read: " + String.join(", ", read.facts().notRead()) + ".");
    }
    List<TallyRow> rows = together ? onePlace(read.rows()) : read.rows();
    return new Result(tally(words, protocol, read.perSkeleton()).count(rows));
  }

  private static List<TallyRow> onePlace(List<TallyRow> rows) {
    String all =
        rows.stream().map(TallyRow::place).distinct().sorted().collect(Collectors.joining(" + "));
    return rows.stream()
        .map(r -> new TallyRow(all, r.taxon(), r.element(), r.side(), r.portion(), r.count()))
        .toList();
  }

  private int ofCollection(Path file) throws IOException {
    ReferenceTables words;
    CalledBones called;
    try (Collection opened = Collection.open(file, terminal.clock())) {
      opened.caution().ifPresent(terminal::note);
      words = HouseTables.of(opened);
      called = CalledBones.of(opened.trays(), lots, words.taxa());
    }
    terminal.note(called.sentence());
    if (called.refusal().isPresent()) {
      String why = called.refusal().get();
      if (json.file().isPresent()) {
        JsonArgument.write(json.file().get(), writer -> TallyJson.refused(writer, why));
      }
      throw new CannotDo(why);
    }
    return new Result(tally(words, words.protocol(), Map.of()).count(called.rows())).write();
  }

  private static Tally tally(
      ReferenceTables words,
      Protocol protocol,
      Map<ProtocolNumbers.Bone, PerSkeleton.Occurrence> told) {
    SkeletonGroups groups = SkeletonGroups.shipped(words.taxa());
    return new Tally(new ProtocolNumbers(protocol, groups::of, told));
  }

  private final class Result {
    private final List<PlaceTally> places;

    Result(List<PlaceTally> places) {
      this.places = places;
    }

    int write() throws IOException {
      if (json.file().isPresent()) {
        JsonArgument.write(json.file().get(), writer -> TallyJson.write(writer, places));
      } else {
        TallyText text = new TallyText(terminal);
        places.forEach(text::write);
        text.closing();
      }
      return Terminal.FINE;
    }
  }
}
