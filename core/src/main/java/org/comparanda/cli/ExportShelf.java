package org.comparanda.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.comparanda.dossier.HeldAnimals;
import org.comparanda.exchange.shelf.ShelfTable;
import org.comparanda.house.Right;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The shelf as a table that shelf add reads back. */
@Command(
    name = "shelf",
    description = {
      "Write the animals of the shelf as a table that shelf add reads back as it was. Animals that",
      "may not be exported are held back."
    },
    mixinStandardHelpOptions = true)
final class ExportShelf implements Callable<Integer> {
  private static final int LISTED = 20;

  private final Terminal terminal;

  @Parameters(
      paramLabel = "OUT.csv",
      description = "The table; a name that ends in .xlsx makes it a spreadsheet.")
  private Path out = Path.of("");

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(
      names = "--shape",
      paramLabel = "SHAPE",
      description = "wide (a row for each bone, if not said) or long (a row for each reading).")
  private ShelfTable.Shape shape = ShelfTable.Shape.WIDE;

  @Option(
      names = "--restricted-opened-by",
      paramLabel = "PERSON",
      description = "Let restricted animals out, on this person's word, who needs that right.")
  private @Nullable String opener;

  ExportShelf(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    HeldAnimals animals;
    String head;
    try (Collection opened = collection.open(terminal)) {
      animals = HeldAnimals.of(opened.register().all(), restricted(opened));
      head = opened.dayBookHead();
    }
    if (animals.open().isEmpty()) {
      throw new CannotDo("There is no animal to export; " + animals.sentence() + ".");
    }
    ShelfTable table = new ShelfTable(ReferenceTables.shipped().protocol(), animals.open());
    FinishedFile.write(
        out,
        bytes -> {
          if (out.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            table.sheet(shape, bytes);
          } else {
            Writer text = new BufferedWriter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8));
            table.csv(shape, text);
            text.flush();
          }
        });
    terminal.say(
        "Wrote "
            + out
            + ": "
            + Count.of(animals.open().size(), "animal")
            + " in "
            + Count.of(table.rows(), "row")
            + "; "
            + animals.sentence()
            + (opener == null ? "" : "; restricted animals opened by " + opener)
            + "; Day Book "
            + head
            + ".");
    table.notHeld().stream()
        .limit(LISTED)
        .forEach(what -> terminal.note("A table can't hold " + what + "."));
    if (table.notHeld().size() > LISTED) {
      terminal.note("And " + (table.notHeld().size() - LISTED) + " more like these.");
    }
    return table.notHeld().isEmpty() ? Terminal.FINE : Terminal.PROBLEMS_FOUND;
  }

  private HeldAnimals.Restricted restricted(Collection opened) {
    if (opener == null) {
      return HeldAnimals.Restricted.HELD_BACK;
    }
    CannotDo.orElse(
        opened
            .grants()
            .rights()
            .asked(
                new PersonId(opener),
                Right.OPEN_RESTRICTED,
                "restricted animals stay held back; nothing was written"));
    return HeldAnimals.Restricted.OPENED;
  }
}
