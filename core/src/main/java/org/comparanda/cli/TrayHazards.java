package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Records the hazards of a tray. */
@Command(
    name = "hazards",
    description = "Record what is dangerous about a tray: shown before its first bone.",
    mixinStandardHelpOptions = true)
final class TrayHazards implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "TRAY", description = "Key of the tray.")
  private String tray = "";

  @Parameters(index = "1", paramLabel = "TEXT", description = "Arsenic, mould, none known, ...")
  private String hazards = "";

  TrayHazards(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      opened
          .by(by.person())
          .trays()
          .save(TrayNamed.tray(opened, tray).withHazards(hazards.strip()));
      terminal.say("Recorded for " + tray + ": " + hazards.strip());
    }
    return Terminal.FINE;
  }
}
