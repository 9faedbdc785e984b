package org.comparanda.cli;

import java.nio.file.Path;
import org.comparanda.measurement.PersonId;
import org.comparanda.register.ChangeNote;
import org.comparanda.statistics.Outcome;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Option;

/** Which collection is changed, by whom and why. */
final class ChangeArguments {
  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  @Option(names = "--by", required = true, paramLabel = "PERSON", description = "Who changes it.")
  private String person = "";

  @Option(
      names = "--why",
      required = true,
      paramLabel = "TEXT",
      description = "Why; it stands in the Day Book with the old and the new value.")
  private String why = "";

  Collection open(Terminal terminal) {
    if (person.isBlank() || why.isBlank()) {
      throw new CannotDo("Say who (--by) and why (--why). Nothing was changed.");
    }
    Collection opened = Collection.open(collection, terminal.clock());
    opened.caution().ifPresent(terminal::note);
    return opened;
  }

  ChangeNote note() {
    return new ChangeNote(new PersonId(person.strip()), why.strip());
  }

  /** What was done, or the end of the command with the reason. */
  static <T> T done(Outcome<T> outcome) {
    return outcome.value().orElseThrow(() -> CannotDo.because(outcome));
  }
}
