package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.measurement.PersonId;
import org.comparanda.pile.Interest;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records research that waits for an arrival. */
@Command(
    name = "ask",
    description = "Record research that waits for an arrival; it moves up on the pile.",
    mixinStandardHelpOptions = true)
final class PileAsk implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "NUMBER", description = "Number of the arrival.")
  private String number = "";

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(names = "--by", required = true, paramLabel = "PERSON", description = "Who asks.")
  private String person = "";

  @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "What for.")
  private String reason = "";

  PileAsk(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (reason.isBlank()) {
      throw new CannotDo("Research interest needs a reason. Nothing was stored.");
    }
    try (Collection opened = collection.open(terminal)) {
      PileStage.there(opened, number);
      opened
          .pile()
          .add(new Interest(number, new PersonId(person), reason, terminal.clock().instant()));
    }
    terminal.say(number + " moves up: asked for by " + person + ".");
    return Terminal.FINE;
  }
}
