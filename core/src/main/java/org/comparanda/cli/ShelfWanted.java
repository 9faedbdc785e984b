package org.comparanda.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.exchange.json.ShelfJson;
import org.comparanda.stock.Wanted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which animals to prepare next. */
@Command(
    name = "wanted",
    description =
        "What to prepare next: five animals more of which kind would help the answers about an"
            + " element most, measured by the held-out log score (the mean log of the share that a"
            + " bone gives to its own kind).",
    mixinStandardHelpOptions = true)
final class ShelfWanted implements Callable<Integer> {
  private final Terminal terminal;

  @Option(
      names = "--first",
      paramLabel = "N",
      description = "Print only the first so many lines (10); JSON always has all.")
  private int first = 10;

  @Mixin private ShelfArguments shelf = new ShelfArguments();
  @Mixin private TableArguments tables = new TableArguments();
  @Mixin private JsonArgument json = new JsonArgument();

  ShelfWanted(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    ShelfArguments.Opened opened = shelf.open(terminal, tables.options()).of(tables.element());
    List<Wanted.Entry> list = Wanted.withDefaults().of(opened.shelf());
    if (json.file().isPresent()) {
      JsonArgument.write(json.file().get(), out -> ShelfJson.wanted(out, list));
    } else {
      list.stream()
          .limit(first)
          .forEach(
              e ->
                  terminal.say(
                      "%s, %s: %s. %s"
                          .formatted(e.taxon(), e.element(), e.growthText(), e.reason())));
      terminal.note(
          "The figure: by how much five animals more of that kind would raise, on average, the"
              + " share that bones of that element give to their own kind.");
    }
    if (list.isEmpty()) {
      terminal.note(
          "No element has two taxa and animals enough for a spread. Add animals to the shelf.");
      return Terminal.PROBLEMS_FOUND;
    }
    return Terminal.FINE;
  }
}
