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
      "List the saved mappings of a collection, show one as text, or delete one. Saved to a file,",
      "its text serves as --mapping FILE anywhere."
    },
    mixinStandardHelpOptions = true)
final class ShelfMappings implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(names = "--show", paramLabel = "NAME", description = "Show this one.")
  private @Nullable String shown;

  @Option(names = "--delete", paramLabel = "NAME", description = "Delete this one.")
  private @Nullable String deleted;

  ShelfMappings(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      if (deleted != null) {
        text(opened, deleted);
        opened.mappings().remove(deleted);
        terminal.say(
            "The mapping \"" + deleted + "\" is gone. The Day Book says that it was there.");
      } else if (shown != null) {
        terminal.say(text(opened, shown));
      } else {
        opened.mappings().names().forEach(terminal::say);
      }
    }
    return Terminal.FINE;
  }

  private static String text(Collection opened, String name) {
    return opened
        .mappings()
        .text(name)
        .orElseThrow(
            () ->
                new CannotDo(
                    "There is no mapping \""
                        + name
                        + "\". Nothing was changed. shelf mappings lists them."))
        .strip();
  }
}
