package org.comparanda.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tray.Search;
import org.comparanda.tray.SpokenNames;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds words anywhere in a collection. */
@Command(
    name = "search",
    description = {
      "Find words anywhere in the record: bones, calls, readings, trays, lots, animals and their",
      "readings, names, people, old cards, the pile, pictures. All words must be in one thing; each",
      "may be only begun. Words in quotation marks stand side by side: \"Bd 32.1\". Elements, sides",
      "and taxa are also found by their other names."
    },
    mixinStandardHelpOptions = true)
final class SearchCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Parameters(arity = "1..*", paramLabel = "WORD", description = "Words, in any case.")
  private List<String> words = List.of();

  @Option(
      names = "--most",
      paramLabel = "N",
      description = "How many hits at most; 50 when not said.")
  private int most = 50;

  SearchCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  private static SpokenNames names(Collection opened) {
    ReferenceTables tables = HouseTables.of(opened);
    return new SpokenNames(tables.protocol().elements(), tables.taxa());
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      List<Search.Hit> hits = opened.search(names(opened)).find(String.join(" ", words), most);
      hits.forEach(hit -> terminal.say(Words.of(hit.kind()) + "  " + hit.text()));
      terminal.note(Count.of(hits.size(), "hit") + (hits.size() == most ? " or more." : "."));
    }
    return Terminal.FINE;
  }
}
