package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Names a person. */
@Command(
    name = "name",
    description = "Record the name of a person. Rows everywhere hold the id alone.",
    mixinStandardHelpOptions = true)
final class PeopleName implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Parameters(index = "0", paramLabel = "PERSON", description = "Id of the person.")
  private String person = "";

  @Parameters(index = "1", paramLabel = "NAME", description = "The name.")
  private String name = "";

  PeopleName(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      opened.people().save(new Person(new PersonId(person), name.strip()));
      terminal.say(person + " is now known as " + name.strip() + ".");
    }
    return Terminal.FINE;
  }
}
