package org.comparanda.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Search;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds words anywhere in a collection. */
@Command(
    name = "search",
    description =
        "Find words anywhere: bones, calls, trays, lots, animals. All words must be in one thing.",
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

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      List<Search.Hit> hits = opened.search().find(String.join(" ", words), most);
      hits.forEach(hit -> terminal.say(Words.of(hit.kind()) + "  " + hit.text()));
      terminal.note(Count.of(hits.size(), "hit") + (hits.size() == most ? " or more." : "."));
    }
    return Terminal.FINE;
  }
}
