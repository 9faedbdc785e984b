package org.comparanda.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.comparanda.exchange.mapping.MappingText;
import org.comparanda.exchange.table.FileContent;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.reference.ImportedTable;
import org.comparanda.reference.Shelf;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.SetDown;
import org.comparanda.register.TableIntake;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonTree;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Brings a table of animals into a collection, all of it or nothing. */
@Command(
    name = "add",
    description = {
      "Import a table of comparative animals into a collection: all of it, or nothing and a"
          + " report.",
      "A collection that is not there yet is made."
    },
    mixinStandardHelpOptions = true)
final class ShelfAdd implements Callable<Integer> {
  private static final long TELL_EVERY = 10_000;

  private final Terminal terminal;

  @Parameters(
      paramLabel = "TABLE",
      description = "CSV or spreadsheet (.xlsx): a row for each animal, each bone or each reading.")
  private Path table = Path.of("");

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path file = Path.of("");

  @Mixin private TableArguments tables = new TableArguments();

  @Option(
      names = "--dry-run",
      description = "Read and check the table and say what would be stored; store nothing.")
  private boolean dryRun;

  @Option(
      names = "--save-mapping",
      paramLabel = "NAME",
      description = "Save how this table was read under this name, once it was read whole.")
  private @Nullable String mappingName;

  @Option(
      names = "--again",
      description = "Read a table although one with the same content was imported before.")
  private boolean again;

  @Option(
      names = "--from-start",
      description =
          "Forget what an interrupted import of this table has set down; without it, this one goes"
              + " on from there.")
  private boolean fromStart;

  private long told;

  ShelfAdd(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    if (dryRun && !Files.exists(file)) {
      List<AnimalCard> cards =
          cards(new Shelf(List.of()), ReferenceTables.shipped().taxa(), tables.options());
      wouldStore(cards, 0);
      return Terminal.FINE;
    }
    try (Collection collection = Collection.openOrCreate(file, terminal.clock())) {
      collection.caution().ifPresent(terminal::note);
      TableOptions options = tables.options(collection.mappings()::text);
      String content = Files.isRegularFile(table) ? FileContent.sha256(table) : "";
      if (!again) {
        collection.importedTables().ofContent(content).ifPresent(this::refuse);
      }
      if (!dryRun) {
        begun(collection.tableIntake(), content);
      }
      List<AnimalCard> there = collection.register().all();
      long onTheShelf = there.stream().filter(c -> c.standing().onTheShelf()).count();
      List<AnimalCard> cards =
          cards(everyNumber(there), HouseTables.of(collection).taxa(), options);
      if (dryRun) {
        wouldStore(cards, onTheShelf);
      } else {
        store(collection, cards, content, onTheShelf);
        saveMapping(collection, options);
      }
    }
    return Terminal.FINE;
  }

  private void refuse(ImportedTable before) {
    throw new CannotDo(
        "\""
            + table.getFileName()
            + "\" was imported before, on "
            + before.at()
            + (before.file().equals(String.valueOf(table.getFileName()))
                ? ""
                : " under the name \"" + before.file() + "\"")
            + ", with "
            + Count.of(before.animals(), "animal")
            + ". Nothing was stored. If its animals are to come in once more under other numbers,"
            + " say --again.");
  }

  /** Says what an interrupted import has set down, or forgets it. */
  private void begun(TableIntake intake, String content) {
    if (fromStart) {
      intake.forget(content);
    }
    intake
        .begun(content)
        .ifPresent(
            down ->
                terminal.note(
                    upTo(down)
                        + " of this table were set down on "
                        + down.at().truncatedTo(ChronoUnit.SECONDS)
                        + "; going on from there. (--from-start forgets them.)"));
  }

  private static String upTo(SetDown down) {
    return down.animals() + " of " + Count.of(down.of(), "animal");
  }

  private List<AnimalCard> cards(Shelf numbers, TaxonTree tree, TableOptions options) {
    ReferenceTables words = ReferenceTables.shipped();
    long headerRow = options.headerRow().orElse(1L);
    return TableReader.of(words.protocol(), tree, options.withTaxa(TableOptions.Taxa.OPTIONAL))
        .watchedBy(new ProgressLine(terminal, table))
        .cardsFor(numbers, table)
        .fold(
            read -> {
              tables.everyMappingFound(List.of(read.facts()));
              terminal.note(read.facts().sentence());
              return read.content();
            },
            report -> {
              List<String> lines = new ArrayList<>(report.lines());
              if (report.problems().stream()
                  .anyMatch(p -> p.row().equals(Optional.of(headerRow)))) {
                lines.add(
                    "What each column seems to be, and how to say so: shelf look "
                        + table.getFileName());
              }
              throw new CannotDo(lines);
            });
  }

  private void wouldStore(List<AnimalCard> cards, long there) {
    long taxa = cards.stream().map(c -> c.animal().taxon()).distinct().count();
    terminal.say(
        "Dry run: the table is sound. It would bring "
            + Count.of(cards.size(), "animal")
            + " of "
            + Count.of(taxa, "name")
            + " with "
            + Count.of(bones(cards), "bone")
            + "; the collection holds "
            + Count.of(there, "animal")
            + ". Nothing was stored.");
  }

  private static int bones(List<AnimalCard> cards) {
    return cards.stream().mapToInt(a -> a.animal().bones().size()).sum();
  }

  private void store(Collection collection, List<AnimalCard> cards, String content, long there) {
    String name = String.valueOf(table.getFileName());
    long stored = collection.tableIntake().bringIn(content, name, cards, this::stored);
    if (stored == 0) {
      throw new CannotDo(
          "Stopped. Nothing was stored; the collection is as it was."
              + collection
                  .tableIntake()
                  .begun(content)
                  .map(
                      down ->
                          " "
                              + upTo(down)
                              + " are set down beside it for "
                              + TableIntake.KEPT_DAYS
                              + " days: the same command goes on from there.")
                  .orElse(""));
    }
    terminal.say(
        "Stored "
            + Count.of(cards.size(), "animal")
            + " with "
            + Count.of(bones(cards), "bone")
            + " in "
            + file
            + "; it now holds "
            + Count.of(there + stored, "animal")
            + ".");
  }

  private void saveMapping(Collection collection, TableOptions options) {
    if (mappingName != null) {
      collection.mappings().save(mappingName, MappingText.write(options));
      terminal.say("Saved the mapping \"" + mappingName + "\".");
    }
  }

  private boolean stored(long animals) {
    if (animals >= told + TELL_EVERY) {
      told = animals - animals % TELL_EVERY;
      terminal.note(Count.of(animals, "animal") + " written, none valid yet");
    }
    return !Thread.currentThread().isInterrupted();
  }

  /** A number that was ever given is not given again, whether its animal is on the shelf or not. */
  private static Shelf everyNumber(List<AnimalCard> there) {
    return new Shelf(there.stream().map(AnimalCard::animal).toList());
  }
}
