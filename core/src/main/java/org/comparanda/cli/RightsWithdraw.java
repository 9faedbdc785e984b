package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.house.Grant;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Withdraws a right. */
@Command(
    name = "withdraw",
    description = {
      "Withdraw a right: keeper, open_places, open_stop, open_restricted. Keepers alone do; while"
          + " there",
      "is none, a person may make themselves keeper."
    },
    mixinStandardHelpOptions = true)
final class RightsWithdraw implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private GrantArguments grant = new GrantArguments();

  RightsWithdraw(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    grant.record(Grant.Kind.WITHDRAWN, "withdrawn from", terminal);
    return Terminal.FINE;
  }
}
