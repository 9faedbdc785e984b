package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.house.Grant;
import org.comparanda.house.Right;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Gives a right. */
@Command(
    name = "give",
    description = {
      "Give a right: keeper, open_places, open_stop, open_restricted. Keepers alone do; while there",
      "is none, a person may make themselves keeper."
    },
    mixinStandardHelpOptions = true)
final class RightsGive implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "PERSON", description = "Whose right it is.")
  private String person = "";

  @Parameters(index = "1", paramLabel = "RIGHT", description = "Which right.")
  private Right right = Right.KEEPER;

  @Option(names = "--reason", paramLabel = "TEXT", description = "Why.")
  private String reason = "";

  RightsGive(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      CannotDo.orElse(
          opened
              .grants()
              .append(
                  new Grant(
                      0,
                      new PersonId(person),
                      right,
                      Grant.Kind.GIVEN,
                      by.person(),
                      terminal.clock().instant(),
                      reason)));
      terminal.say("The right " + Words.of(right) + " was given to " + person + ".");
    }
    return Terminal.FINE;
  }
}
