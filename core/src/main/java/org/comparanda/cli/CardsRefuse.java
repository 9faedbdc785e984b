package org.comparanda.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.measurement.PersonId;
import org.comparanda.oldcards.CardDecision;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Keeps that cards were refused, and why. */
@Command(
    name = "refuse",
    description = "Keep that cards are not taken over, and why; their texts stay.",
    mixinStandardHelpOptions = true)
final class CardsRefuse implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "CARD", arity = "1..*", description = "Numbers of cards.")
  private List<Long> numbers = new ArrayList<>();

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(names = "--by", required = true, paramLabel = "PERSON", description = "Who refuses.")
  private String person = "";

  @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why.")
  private String reason = "";

  CardsRefuse(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      for (long number : numbers) {
        if (opened.oldCards().card(number).isEmpty()) {
          throw new CannotDo("There is no card " + number + ". Nothing was stored.");
        }
        if (opened.oldCards().card(number).orElseThrow().accepted()) {
          throw new CannotDo(
              "Card "
                  + number
                  + " was accepted: its bones are on a tray. Nothing was stored. Call them anew"
                  + " there.");
        }
      }
      for (long number : numbers) {
        opened
            .oldCards()
            .refuse(
                new CardDecision(
                    number,
                    CardDecision.Kind.REFUSED,
                    new PersonId(person),
                    terminal.clock().instant(),
                    reason));
      }
      terminal.say("Refused " + Count.of(numbers.size(), "card") + "; the texts stay.");
    }
    return Terminal.FINE;
  }
}
