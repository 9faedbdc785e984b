package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The saved mappings of a collection. */
@Command(
    name = "mappings",
    description = {
      "List the saved mappings of a collection, or show one as text; saved to a file, it serves as",
      "--mapping FILE anywhere."
    },
    mixinStandardHelpOptions = true)
final class ShelfMappings implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(names = "--show", paramLabel = "NAME", description = "Show this one.")
  private @Nullable String shown;

  ShelfMappings(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      if (shown == null) {
        opened.mappings().names().forEach(terminal::say);
      } else {
        terminal.say(
            opened
                .mappings()
                .text(shown)
                .orElseThrow(() -> new CannotDo("There is no mapping \"" + shown + "\"."))
                .strip());
      }
    }
    return Terminal.FINE;
  }
}
