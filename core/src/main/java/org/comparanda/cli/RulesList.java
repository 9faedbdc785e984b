package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.house.RuleName;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists the rules. */
@Command(
    name = "list",
    description = "List the rules of the house as they hold now.",
    mixinStandardHelpOptions = true)
final class RulesList implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  RulesList(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      for (RuleName name : RuleName.values()) {
        terminal.say(name.word() + ": " + opened.houseRules().now(name));
      }
    }
    return Terminal.FINE;
  }
}
