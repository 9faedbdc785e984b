package org.comparanda.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.comparanda.exchange.json.PileJson;
import org.comparanda.pile.PileEntry;
import org.comparanda.pile.PileOrder;
import org.comparanda.stock.Wanted;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The pile in its order. */
@Command(
    name = "list",
    description = {
      "List the pile, the top first: what research waits for, then what the shelf gains most from,",
      "then what came in first."
    },
    mixinStandardHelpOptions = true)
final class PileList implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Mixin private JsonArgument json = new JsonArgument();

  PileList(Terminal terminal) {
    this.terminal = terminal;
  }

  static List<PileEntry> entries(Collection opened) {
    return PileOrder.of(
        opened.pile().all(),
        opened.pile().interest(),
        Wanted.withDefaults().of(opened.animals().shelf()),
        HouseTables.of(opened).taxa());
  }

  @Override
  public Integer call() throws IOException {
    List<PileEntry> entries;
    try (Collection opened = collection.open(terminal)) {
      entries = entries(opened);
    }
    Optional<java.nio.file.Path> out = json.file();
    if (out.isPresent()) {
      JsonArgument.write(out.get(), writer -> PileJson.entries(writer, entries));
    } else {
      entries.forEach(e -> terminal.say(line(e)));
    }
    terminal.note(Count.of(entries.size(), "arrival") + " on the pile.");
    return Terminal.FINE;
  }

  private static String line(PileEntry e) {
    return e.place()
        + ". "
        + e.arrival().number()
        + ", "
        + e.arrival().taxon()
        + " ("
        + e.arrival().what()
        + "), "
        + e.arrival().stage().name().toLowerCase(Locale.ROOT).replace('_', ' ')
        + ", since "
        + e.arrival().cameIn()
        + ", from "
        + e.arrival().from()
        + (e.arrival().place().isEmpty() ? "" : ", " + e.arrival().place())
        + (e.arrival().permit().isEmpty() ? "" : ", permit " + e.arrival().permit())
        + ". "
        + e.why();
  }
}
