package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.house.HouseRule;
import org.comparanda.house.RuleName;
import org.comparanda.house.RulesInForce;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists the rules. */
@Command(
    name = "list",
    description = "List the rules of the house as they hold now, each with what it may be set to.",
    mixinStandardHelpOptions = true)
final class RulesList implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(names = "--history", description = "Every setting ever made: when, who, what, why.")
  private boolean history;

  RulesList(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      if (history) {
        opened.houseRules().all().forEach(this::past);
      } else {
        RulesInForce rules = opened.houseRules().inForce();
        for (RuleName name : RuleName.values()) {
          terminal.say(name.word() + ": " + rules.now(name) + " (" + name.allowed() + ")");
        }
      }
    }
    return Terminal.FINE;
  }

  private void past(HouseRule rule) {
    terminal.say(
        rule.at()
            + ", "
            + rule.by().value()
            + ": "
            + rule.name().word()
            + " "
            + rule.content()
            + (rule.why().isBlank() ? "" : ", because " + rule.why()));
  }
}
