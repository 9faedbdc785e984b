package org.comparanda.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.reference.Shelf;
import org.comparanda.register.AnimalCard;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
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

  @Parameters(paramLabel = "TABLE", description = "CSV, one row per bone or per animal.")
  private Path table = Path.of("");

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path file = Path.of("");

  @Mixin private TableArguments tables = new TableArguments();

  ShelfAdd(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    ReferenceTables words = ReferenceTables.shipped();
    TableOptions options = tables.options().withTaxa(TableOptions.Taxa.OPTIONAL);
    try (Collection collection = Collection.openOrCreate(file, terminal.clock())) {
      collection.caution().ifPresent(terminal::note);
      List<AnimalCard> animals =
          TableReader.of(words.protocol(), words.taxa(), options)
              .watchedBy(new ProgressLine(terminal, table))
              .cardsFor(everyNumber(collection), table)
              .fold(
                  read -> {
                    tables.everyMappingFound(List.of(read.facts()));
                    terminal.note(read.facts().sentence());
                    return read.content();
                  },
                  report -> {
                    throw new CannotDo(report.lines());
                  });
      long stored =
          collection
              .register()
              .addAll(animals.iterator(), String.valueOf(table.getFileName()), this::stored);
      if (stored == 0) {
        throw new CannotDo("Stopped. Nothing was stored; the collection is as it was.");
      }
      int bones = animals.stream().mapToInt(a -> a.animal().bones().size()).sum();
      terminal.say(
          "Stored "
              + Count.of(animals.size(), "animal")
              + " with "
              + Count.of(bones, "bone")
              + " in "
              + file
              + "; it now holds "
              + Count.of(collection.animals().shelf().animals().size(), "animal")
              + ".");
    }
    return Terminal.FINE;
  }

  private boolean stored(long animals) {
    if (animals > 0 && animals % TELL_EVERY == 0) {
      terminal.note(Count.of(animals, "animal") + " written");
    }
    return !Thread.currentThread().isInterrupted();
  }

  /** A number that was ever given is not given again, whether its animal is on the shelf or not. */
  private static Shelf everyNumber(Collection collection) {
    return new Shelf(collection.register().all().stream().map(AnimalCard::animal).toList());
  }
}
