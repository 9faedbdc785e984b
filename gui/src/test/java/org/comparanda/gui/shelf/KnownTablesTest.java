package org.comparanda.gui.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.gui.shelf.ImportState.Stage;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.ImportedTable;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables that were imported before, or that bring a number that was ever given. */
class KnownTablesTest {
  @TempDir private Path folder;
  private final AnimalsInMemory animals = new AnimalsInMemory();
  private final ShelfViewModel shelf = ShelfViewModelTest.model(animals);

  @Test
  void aTableImportedBeforeIsReadOnceThePersonSaysSo() throws IOException {
    animals.imported(new ImportedTable("", "old.csv", Instant.parse("2026-11-20T08:00:00Z"), 3));
    shelf.tryImport(table("animal,taxon,element,GL\nT-9,Ovis aries,humerus,150\n"));
    ImportState known = shelf.importProperty().get();
    assertEquals(Stage.KNOWN, known.stage());
    assertTrue(
        known
            .sentence()
            .startsWith(
                "\"invented.csv\" was imported before, on 2026-11-20 as \"old.csv\", with 3"),
        known.sentence());
    shelf.importOnceMore();
    assertEquals(Stage.SOUND, shelf.importProperty().get().stage());
    shelf.tryImport(table("animal,taxon,element,GL\nT-9,Ovis aries,humerus,151\n"));
    assertEquals(Stage.KNOWN, shelf.importProperty().get().stage(), "another table is asked anew");
  }

  @Test
  void aNumberOfAnAnimalOffTheShelfIsRefusedHoweverTheTableIsRead() throws IOException {
    AnimalCard retired = AnimalCard.blank(new AnimalId("T-9")).withStanding(new Standing.Retired());
    ShelfViewModel keeping =
        new ShelfViewModel(
            new ShelfRoom(
                animals,
                animals,
                () -> List.of(retired),
                ShelfViewModelTest.TABLES.protocol(),
                ShelfViewModelTest.TABLES::taxa,
                Words.of("shelf", Locale.ENGLISH),
                Locale.ENGLISH),
            Runnable::run,
            Runnable::run);
    keeping.refresh();
    keeping.tryImport(table("Specimen,Species,Bone,GL\nT-9,Ovis aries,humerus,150\n"));
    keeping.tryMapped(
        List.of(
            new ColumnChoice("Specimen", Optional.of("animal"), Optional.empty()),
            new ColumnChoice("Species", Optional.of("taxon"), Optional.empty()),
            new ColumnChoice("Bone", Optional.of("element"), Optional.empty()),
            new ColumnChoice("GL", Optional.of("GL"), Optional.of(LengthUnit.MILLIMETRE))),
        TableOptions.Unknown.REFUSE);
    ImportState state = keeping.importProperty().get();
    assertEquals(Stage.REFUSED, state.stage());
    assertEquals(Optional.of("T-9"), state.problems().get(0).value());
  }

  private Path table(String text) throws IOException {
    return Files.writeString(folder.resolve("invented.csv"), text);
  }
}
