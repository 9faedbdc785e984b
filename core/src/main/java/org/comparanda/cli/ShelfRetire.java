package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.reference.AnimalId;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes an animal off the shelf, or puts it back. */
@Command(
    name = "retire",
    description = {
      "Take an animal off the shelf: out of every fit and the stock, still found. Nothing is",
      "deleted."
    },
    mixinStandardHelpOptions = true)
final class ShelfRetire implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "NUMBER", description = "Catalogue number.")
  private String number = "";

  @Option(names = "--back", description = "Put a retired animal back instead.")
  private boolean back;

  @Mixin private ChangeArguments change = new ChangeArguments();

  ShelfRetire(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = change.open(terminal)) {
      AnimalId id = ShelfShow.find(opened, number).id();
      ChangeArguments.done(
          back
              ? opened.register().bringBack(id, change.note())
              : opened.register().retire(id, change.note()));
      terminal.say(
          back
              ? id + " stands on the shelf again."
              : id + " is off the shelf: in no fit, and still found with shelf show.");
    }
    return Terminal.FINE;
  }
}
