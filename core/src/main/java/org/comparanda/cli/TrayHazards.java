package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tray.LotNotes;
import org.comparanda.tray.Tray;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Records the hazards of one tray beside those of its lot. */
@Command(
    name = "hazards",
    description =
        "Record what is dangerous about one tray alone, beside the hazards of its lot (tray lot).",
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
      Tray now = TrayNamed.tray(opened, tray);
      Tray noted = now.withOwn(new LotNotes(now.own().provenance(), hazards.strip()));
      opened.by(by.person()).trays().save(noted);
      terminal.say(
          "Recorded for " + tray + ": " + hazards.strip() + ". Shown with it: " + noted.hazards());
    }
    return Terminal.FINE;
  }
}
