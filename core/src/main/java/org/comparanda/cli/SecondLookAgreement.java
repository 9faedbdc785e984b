package org.comparanda.cli;

import java.util.Map;
import java.util.concurrent.Callable;
import org.comparanda.secondlook.Agreement;
import org.comparanda.secondlook.LookDesk;
import org.comparanda.secondlook.ManyLooks;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.agreement.Kappa;
import org.comparanda.storage.Collection;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How far people agree. */
@Command(
    name = "agreement",
    description = {
      "How far two people agree (Cohen) and three or more (Fleiss), with 95 %% intervals, from the",
      "every-nth draw alone; and which names were given to one bone."
    },
    mixinStandardHelpOptions = true)
final class SecondLookAgreement implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(
      names = "--rank",
      paramLabel = "RANK",
      description = "Count calls at this rank, for example genus.")
  private @Nullable String rank;

  SecondLookAgreement(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      LookDesk desk = SecondLookCommand.desk(opened);
      Agreement agreement = new Agreement(desk.looks(), HouseTables.of(opened).taxa());
      terminal.say("From the every-nth draw:");
      Outcome<Kappa> cohen = rank == null ? agreement.kappa() : agreement.kappaAt(rank);
      say("Cohen's kappa" + (rank == null ? "" : " at " + rank), cohen);
      say("Fleiss' kappa", ManyLooks.fleiss(desk.groups()));
      confusions(agreement.confusions());
      terminal.say("Looked at again for a reason (says nothing on the whole lot):");
      confusions(agreement.confusionsOfTargeted());
    }
    return Terminal.FINE;
  }

  private void say(String what, Outcome<Kappa> kappa) {
    terminal.say(
        "  "
            + what
            + ": "
            + kappa.fold(
                k ->
                    Figures.five(k.value())
                        + " ("
                        + Figures.five(k.interval(0.95).lower())
                        + " to "
                        + Figures.five(k.interval(0.95).upper())
                        + "), "
                        + Count.of(k.subjects(), "bone"),
                none -> "not estimable: " + none.reason()));
  }

  private void confusions(Map<Agreement.Confusion, Integer> table) {
    table.forEach(
        (pair, count) ->
            terminal.say(
                "  " + pair.one() + " and " + pair.other() + ": " + Count.of(count, "bone")));
    if (table.isEmpty()) {
      terminal.say("  no bone was given two names");
    }
  }
}
