package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Blanks a name. */
@Command(
    name = "blank",
    description =
        "Blank the name of a person. Their rows stay under the id, and the Day Book holds as before.",
    mixinStandardHelpOptions = true)
final class PeopleBlank implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Parameters(index = "0", paramLabel = "PERSON", description = "Id of the person.")
  private String person = "";

  PeopleBlank(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      if (opened.people().person(new PersonId(person)).isEmpty()) {
        throw new CannotDo(
            "Nobody here has the id \"" + person + "\". Nothing was changed. Look at people list.");
      }
      opened.people().save(new Person(new PersonId(person), ""));
      terminal.say("The name of " + person + " was blanked. Older backups and exports keep it.");
    }
    return Terminal.FINE;
  }
}
