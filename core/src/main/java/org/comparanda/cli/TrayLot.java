package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Lot;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says how sensitive the places of a lot are. */
@Command(
    name = "lot",
    description = {
      "Say whether the recorded places of a lot may leave the house: go_out, held_back (unless",
      "opened by a person with that right; this is so until said otherwise), never_out."
    },
    mixinStandardHelpOptions = true)
final class TrayLot implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "LOT", description = "Name of the lot.")
  private String lot = "";

  @Parameters(index = "1", paramLabel = "PLACES", description = "go_out, held_back or never_out.")
  private Lot.Places places = Lot.Places.HELD_BACK;

  @Option(names = "--remarks", paramLabel = "TEXT", description = "What else is known of the lot.")
  private String remarks = "";

  TrayLot(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      if (opened.lots().all().stream().noneMatch(l -> l.id().equals(lot))) {
        throw new CannotDo(
            "No tray is of the lot \"" + lot + "\". Nothing was changed. Look at tray list.");
      }
      Keepers.need(opened, by.person(), "the places of " + lot + " stay as they are");
      opened.by(by.person()).lots().save(new Lot(lot, places, remarks));
      terminal.say("Places of " + lot + ": " + Words.of(places) + ".");
    }
    return Terminal.FINE;
  }
}
