package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.house.Grant;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Gives a right. */
@Command(
    name = "give",
    description = {
      "Give a right: keeper, open_places, open_stop, open_restricted. Keepers alone do; while"
          + " there",
      "is none, a person may make themselves keeper."
    },
    mixinStandardHelpOptions = true)
final class RightsGive implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private GrantArguments grant = new GrantArguments();

  RightsGive(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    grant.record(Grant.Kind.GIVEN, "given to", terminal);
    return Terminal.FINE;
  }
}
