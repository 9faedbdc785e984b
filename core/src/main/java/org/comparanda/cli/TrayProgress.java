package org.comparanda.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Lot;
import org.comparanda.tray.LotProgress;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How far each lot has come. */
@Command(
    name = "progress",
    description =
        "How far each lot has come, and how many working days are left, with an interval.",
    mixinStandardHelpOptions = true)
final class TrayProgress implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(names = "--lot", split = ",", paramLabel = "LOT", description = "Only these lots.")
  private List<String> lots = List.of();

  TrayProgress(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      for (Lot lot : opened.lots().all()) {
        if (lots.isEmpty() || lots.contains(lot.id())) {
          say(LotProgress.of(lot.id(), opened.trays(), terminal.clock().getZone()));
        }
      }
    }
    return Terminal.FINE;
  }

  private void say(LotProgress lot) {
    terminal.say(
        lot.lot()
            + ": "
            + Count.of(lot.bones(), "bone")
            + ", "
            + lot.called()
            + " called, "
            + lot.left()
            + " left"
            + (lot.stopped() > 0 ? ", " + lot.stopped() + " set aside as possibly human" : "")
            + "; "
            + lot.forecast()
                .fold(
                    f ->
                        "at the pace of its %d working days %.0f to %.0f more (95 %%, median %.0f)"
                            .formatted(f.from(), f.days().lower(), f.days().upper(), f.median()),
                    none -> "no forecast: " + none.reason())
            + ".");
  }
}
