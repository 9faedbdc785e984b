package org.comparanda.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.comparanda.check.AnimalChecks;
import org.comparanda.check.BoneEntry;
import org.comparanda.check.Finding;
import org.comparanda.check.Judgement;
import org.comparanda.check.NamedRows;
import org.comparanda.check.ShelfEntries;
import org.comparanda.demo.DemoFiles;
import org.comparanda.demo.FaultKind;
import org.comparanda.demo.PlantedTrial;
import org.comparanda.exchange.json.ShelfJson;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.reference.Shelf;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The integrity list of a collection or a table. */
@Command(
    name = "check",
    description = {
      "List what a keeper should look at: slips of unit, swapped digits, sides that differ, bones",
      "unlike their kind, names spelled two ways and more. A table may be faulty: what add refuses",
      "is listed here. Exit code 1 when something is listed that nobody has accepted."
    },
    mixinStandardHelpOptions = true)
final class ShelfCheckCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Option(names = "--collection", paramLabel = "FILE", description = "Stored collection.")
  private @Nullable Path collection;

  @Option(names = "--shelf", paramLabel = "TABLE", description = "A table, sound or not.")
  private @Nullable Path table;

  @Option(
      names = "--planted",
      description = "Plant 60 known faults into a copy of the demo's shelf and count those found.")
  private boolean planted;

  @Option(names = "--seed", paramLabel = "N", description = "Seed of --planted.")
  private long seed = DemoFiles.SEED;

  @Mixin private FindingArguments answered = new FindingArguments();

  @Mixin private TableArguments tables = new TableArguments();

  @Mixin private JsonArgument json = new JsonArgument();

  ShelfCheckCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    ReferenceTables words = ReferenceTables.shipped();
    if (planted) {
      return planted(PlantedTrial.of(words, seed));
    }
    if ((collection == null) == (table == null)) {
      throw new CannotDo("Say either --collection FILE or --shelf TABLE. Nothing was checked.");
    }
    if (table != null && answered.said()) {
      throw new CannotDo(
          "A table keeps no answers. Bring it into a collection (shelf add) and answer there, or"
              + " correct the table itself.");
    }
    Checked checked = table == null ? stored(words) : read(words, table);
    List<Judgement> list = checked.list();
    if (json.file().isPresent()) {
      JsonArgument.write(json.file().get(), out -> ShelfJson.findings(out, list));
    } else {
      print(list);
    }
    long open = list.stream().filter(j -> j.accepted().isEmpty()).count();
    terminal.note(
        Count.of(open, "finding")
            + " open; "
            + (list.size() - open)
            + " accepted. "
            + checked.named().sentence());
    return open == 0 ? Terminal.FINE : Terminal.PROBLEMS_FOUND;
  }

  /** The list, and how many rows its open findings name. */
  private record Checked(List<Judgement> list, NamedRows named) {
    static Checked of(List<BoneEntry> entries, List<Judgement> list) {
      List<Finding> open =
          list.stream().filter(j -> j.accepted().isEmpty()).map(Judgement::finding).toList();
      return new Checked(list, NamedRows.of(entries, open));
    }
  }

  private Checked read(ReferenceTables words, Path from) {
    TableOptions options = tables.options();
    return TableReader.of(words.protocol(), words.taxa(), options)
        .watchedBy(new ProgressLine(terminal, from))
        .entries(from)
        .fold(
            read -> {
              tables.everyMappingFound(List.of(read.facts()));
              terminal.note(read.facts().sentence());
              List<Finding> found = new ArrayList<>(read.content().findings());
              found.addAll(
                  AnimalChecks.findings(
                      new ShelfEntries(
                          read.content().entries(),
                          options.unknown() == TableOptions.Unknown.REGISTER
                              ? read.protocol()
                              : words.protocol(),
                          words.taxa())));
              return Checked.of(read.content().entries(), Judgement.of(found, List.of()));
            },
            report -> {
              throw new CannotDo(report.lines());
            });
  }

  private Checked stored(ReferenceTables words) {
    try (Collection opened =
        Collection.open(java.util.Objects.requireNonNull(collection), terminal.clock())) {
      ShelfEntries entries = entries(opened, words);
      List<Finding> findings = AnimalChecks.findings(entries);
      if (answered.answer(findings, opened, terminal)) {
        entries = entries(opened, words);
        findings = AnimalChecks.findings(entries);
      }
      return Checked.of(entries.all(), Judgement.of(findings, opened.acceptedFindings().all()));
    }
  }

  private ShelfEntries entries(Collection opened, ReferenceTables words) {
    Shelf all = opened.animals().shelf();
    return ShelfEntries.of(
        tables.element().map(e -> KnownElement.on(all, words.protocol(), e)).orElse(all),
        words.protocol(),
        HouseTables.tree(opened, words));
  }

  private void print(List<Judgement> list) {
    for (int i = 0; i < list.size(); i++) {
      Finding f = list.get(i).finding();
      terminal.say(
          "%d. %s: %s %s%s%s"
              .formatted(
                  i + 1,
                  FindingArguments.named(f),
                  f.message(),
                  f.remedy(),
                  collection != null && f.correction().isPresent() ? " [--correct]" : "",
                  list.get(i).accepted().map(a -> " Accepted: " + a.reason()).orElse("")));
    }
  }

  private int planted(PlantedTrial trial) {
    Map<FaultKind, int[]> kinds = new TreeMap<>();
    for (PlantedTrial.Tried tried : trial.planted()) {
      int[] count = kinds.computeIfAbsent(tried.fault().kind(), k -> new int[2]);
      count[0] += tried.finding().isPresent() ? 1 : 0;
      count[1]++;
      if (tried.finding().isEmpty()) {
        terminal.note("Not found: " + tried.fault());
      }
    }
    terminal.say("Faults planted into a copy of the simulated shelf, seed " + seed + ":");
    kinds.forEach(
        (kind, count) ->
            terminal.say("  %-16s found %d of %d".formatted(kind, count[0], count[1])));
    terminal.say(
        String.format(
            Locale.ROOT,
            "planted faults: found %d of %d, false %.2f per 200 clean cells (%d in %d)",
            trial.found(),
            trial.planted().size(),
            trial.falsePer200Cells(),
            trial.falseFindings().size(),
            trial.cleanCells()));
    trial.falseFindings().forEach(f -> terminal.note("False: " + f.message()));
    return Terminal.FINE;
  }
}
