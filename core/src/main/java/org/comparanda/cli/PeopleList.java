package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists people. */
@Command(
    name = "list",
    description = "List the people: id and name.",
    mixinStandardHelpOptions = true)
final class PeopleList implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  PeopleList(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      opened
          .people()
          .all()
          .forEach(
              p -> terminal.say(p.id().value() + ": " + (p.name().isBlank() ? "-" : p.name())));
    }
    return Terminal.FINE;
  }
}
