package org.comparanda.cli;

import org.comparanda.measurement.PersonId;
import picocli.CommandLine.Option;

/** Who does it. */
final class ByArgument {
  @Option(names = "--by", required = true, paramLabel = "PERSON", description = "Who does it.")
  private String person = "";

  PersonId person() {
    if (person.isBlank()) {
      throw new CannotDo("--by names nobody. Nothing was changed. Give the id of a person.");
    }
    return new PersonId(person.strip());
  }
}
