package org.comparanda.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Tray;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says who works on a tray. */
@Command(
    name = "assign",
    description = "Say who works on a tray; without --to nobody does.",
    mixinStandardHelpOptions = true)
final class TrayAssign implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "TRAY", description = "Key of the tray.")
  private String tray = "";

  @Option(names = "--to", paramLabel = "PERSON", description = "Who works on it.")
  private @Nullable String to;

  TrayAssign(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      Tray given =
          TrayNamed.tray(opened, tray).withAssignedTo(Optional.ofNullable(to).map(PersonId::new));
      opened.by(by.person()).trays().save(given);
      terminal.say(given.name() + " is now with " + (to == null ? "nobody" : to) + ".");
    }
    return Terminal.FINE;
  }
}
