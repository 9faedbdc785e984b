package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Gives a taxon another name. */
@Command(
    name = "rename",
    description = {
      "Rename a taxon. Its animals follow; the old name stays as a synonym and is still found;",
      "calls keep what was written."
    },
    mixinStandardHelpOptions = true)
final class TaxaRename implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "OLD", description = "The name now.")
  private String from = "";

  @Parameters(index = "1", paramLabel = "NEW", description = "The name from now on.")
  private String to = "";

  @Mixin private ChangeArguments change = new ChangeArguments();

  TaxaRename(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (from.isBlank() || to.isBlank()) {
      throw new CannotDo("Give the old and the new name. Nothing was renamed.");
    }
    try (Collection opened = change.open(terminal)) {
      int animals =
          ChangeArguments.done(
              opened
                  .names()
                  .rename(
                      new TaxonName(from.strip()),
                      new TaxonName(to.strip()),
                      ReferenceTables.shipped().taxa(),
                      change.note()));
      terminal.say(
          "Renamed "
              + from
              + " to "
              + to
              + ": "
              + Count.of(animals, "animal")
              + " with it; the old name is still found, calls keep what was written.");
    }
    return Terminal.FINE;
  }
}
