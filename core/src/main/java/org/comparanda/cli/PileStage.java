package org.comparanda.cli;

import java.util.Locale;
import java.util.concurrent.Callable;
import org.comparanda.pile.Arrival;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Moves an arrival on. */
@Command(
    name = "stage",
    description = "Say how far an arrival is; on_the_shelf and let_go take it off the pile.",
    mixinStandardHelpOptions = true)
final class PileStage implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "NUMBER", description = "Number of the arrival.")
  private String number = "";

  @Parameters(
      index = "1",
      paramLabel = "STAGE",
      description = "frozen, macerating, cleaned, to_measure, on_the_shelf or let_go.")
  private Arrival.Stage stage = Arrival.Stage.FROZEN;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  PileStage(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      opened.pile().save(there(opened, number).withStage(stage));
    }
    terminal.say(
        number + " is " + stage.name().toLowerCase(Locale.ROOT).replace('_', ' ') + " now.");
    return Terminal.FINE;
  }

  static Arrival there(Collection opened, String number) {
    return opened
        .pile()
        .arrival(number)
        .orElseThrow(
            () ->
                new CannotDo(
                    "There is no arrival \"" + number + "\". Nothing was stored. See pile list."));
  }
}
