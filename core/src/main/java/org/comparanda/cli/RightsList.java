package org.comparanda.cli;

import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.comparanda.house.Right;
import org.comparanda.house.Rights;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists rights. */
@Command(
    name = "list",
    description = "List who may do what, and who gave it.",
    mixinStandardHelpOptions = true)
final class RightsList implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  RightsList(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      Rights rights = opened.grants().rights();
      for (Right right : Right.values()) {
        terminal.say(
            Words.of(right)
                + ": "
                + (rights.holders(right).isEmpty()
                    ? "nobody"
                    : rights.holders(right).stream()
                        .map(PersonId::value)
                        .sorted()
                        .collect(Collectors.joining(", "))));
      }
    }
    return Terminal.FINE;
  }
}
