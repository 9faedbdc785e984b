package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Tray;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Moves a tray on. */
@Command(
    name = "state",
    description = "Say where a tray stands: waiting, on_the_bench, second_look, done, set_aside.",
    mixinStandardHelpOptions = true)
final class TrayState implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Parameters(index = "0", paramLabel = "TRAY", description = "Key of the tray.")
  private String id = "";

  @Parameters(index = "1", paramLabel = "STATE", description = "Where it stands.")
  private Tray.State state = Tray.State.WAITING;

  @Option(names = "--by", paramLabel = "PERSON", description = "Who says so.")
  private @Nullable String person;

  TrayState(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      Tray moved = TrayNamed.tray(opened, id).withState(state);
      Collection mine = person == null ? opened : opened.by(new PersonId(person));
      mine.trays().save(moved);
      terminal.say(moved.name() + " is now " + Words.of(state) + ".");
      if (state == Tray.State.ON_THE_BENCH) {
        HazardsLine.say(terminal, moved);
      }
    }
    return Terminal.FINE;
  }
}
