package org.comparanda.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.comparanda.exchange.csv.NameList;
import org.comparanda.storage.Collection;
import org.comparanda.taxon.TaxonTree;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Writes the names of taxa as a table. */
@Command(
    name = "taxa",
    description = {
      "Write the names that a collection knows as a table (CSV) with Darwin Core terms; taxa add",
      "reads it."
    },
    mixinStandardHelpOptions = true)
final class ExportNames implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "OUT.csv", description = "The table.")
  private Path out = Path.of("");

  @Mixin private CollectionArgument collection = new CollectionArgument();

  ExportNames(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    TaxonTree tree;
    try (Collection opened = collection.open(terminal)) {
      tree = HouseTables.of(opened).taxa();
    }
    byte[] table = NameList.csv(tree).getBytes(StandardCharsets.UTF_8);
    FinishedFile.write(out, bytes -> bytes.write(table));
    terminal.say("Wrote " + out + ": " + Count.of(tree.taxa().size(), "name") + ".");
    return Terminal.FINE;
  }
}
