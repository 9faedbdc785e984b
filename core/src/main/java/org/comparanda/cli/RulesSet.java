package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.house.HouseRule;
import org.comparanda.house.RuleName;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sets a rule. */
@Command(
    name = "set",
    description =
        "Set a rule of the house from now on; rules list names them with what each may be set to.",
    mixinStandardHelpOptions = true)
final class RulesSet implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "RULE", description = "Name of the rule.")
  private String name = "";

  @Parameters(index = "1", paramLabel = "TEXT", description = "What it is set to.")
  private String content = "";

  @Option(names = "--why", paramLabel = "TEXT", description = "Why; stays on record.")
  private String why = "";

  RulesSet(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    RuleName rule =
        RuleName.ofWord(name)
            .orElseThrow(
                () ->
                    new CannotDo(
                        "There is no rule \""
                            + name
                            + "\". Nothing was changed. Look at rules list."));
    try (Collection opened = collection.open(terminal)) {
      CannotDo.orElse(
          opened
              .houseRules()
              .set(
                  new HouseRule(
                      rule,
                      content.strip(),
                      by.person(),
                      terminal.clock().instant(),
                      why.strip())));
      terminal.say(rule.word() + " is now: " + content.strip());
    }
    return Terminal.FINE;
  }
}
