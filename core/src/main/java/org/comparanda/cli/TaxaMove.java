package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts a taxon under another parent. */
@Command(
    name = "move",
    description = "Put a taxon, with all below it, under another parent.",
    mixinStandardHelpOptions = true)
final class TaxaMove implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "NAME", description = "The taxon.")
  private String name = "";

  @Option(names = "--under", required = true, paramLabel = "PARENT", description = "Its parent.")
  private String parent = "";

  @Mixin private ChangeArguments change = new ChangeArguments();

  TaxaMove(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (name.isBlank() || parent.isBlank()) {
      throw new CannotDo("Give the taxon and its parent. Nothing was moved.");
    }
    try (Collection opened = change.open(terminal)) {
      ChangeArguments.done(
          opened
              .names()
              .move(
                  new TaxonName(name.strip()),
                  new TaxonName(parent.strip()),
                  ReferenceTables.shipped().taxa(),
                  change.note()));
      terminal.say(name + " stands under " + parent + " now.");
    }
    return Terminal.FINE;
  }
}
