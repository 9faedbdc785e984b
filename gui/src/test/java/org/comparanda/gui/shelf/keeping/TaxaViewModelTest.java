package org.comparanda.gui.shelf.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.comparanda.storage.Collection;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names are tried, brought in, renamed and moved. */
class TaxaViewModelTest {
  @TempDir Path folder;
  private Collection collection;
  private final Signature signature = new Signature();
  private TaxaViewModel taxa;

  @BeforeEach
  void open() {
    collection = KeepersRoom.collection(folder);
    taxa =
        new TaxaViewModel(
            KeepersRoom.of(collection),
            collection.names(),
            KeepersRoom.TABLES.taxa(),
            signature,
            Runnable::run,
            Runnable::run,
            () -> {});
    signature.whoProperty().set("p1");
    signature.whyProperty().set("new list");
    taxa.look();
  }

  @AfterEach
  void close() {
    collection.close();
  }

  @Test
  void aFileIsTriedBeforeItsNamesAreBroughtIn() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("names.csv"),
            """
            scientificName,scientificNameAuthorship,parentNameUsage
            Lepus,"Linnaeus, 1758",Mammalia
            """);
    taxa.tryFile(file);
    assertEquals(
        "1 names read; 1 would be new or different. Nothing is stored yet.",
        taxa.sentenceProperty().get());
    assertTrue(collection.names().all().byName().isEmpty());
    taxa.add();
    taxa.filterProperty().set("lepus");
    assertEquals(List.of("Linnaeus, 1758"), taxa.listed().stream().map(TaxonRow::author).toList());
  }

  @Test
  void theOldNameFindsTheRenamedTaxonAndItsAnimals() {
    taxa.choose(Optional.of(new TaxonName("Ovis aries")));
    taxa.targetProperty().set("Ovis gmelini");
    taxa.rename();
    assertEquals(
        "Ovis aries is called Ovis gmelini now, 2 animals with it; calls keep what was written.",
        taxa.sentenceProperty().get());
    taxa.filterProperty().set("ovis aries");
    assertEquals(List.of(2L), taxa.listed().stream().map(TaxonRow::animals).toList());
  }

  @Test
  void aTaxonIsMovedUnderAParentThatIsThere() {
    taxa.choose(Optional.of(new TaxonName("Ovis")));
    taxa.targetProperty().set("Nowhere");
    taxa.move();
    assertEquals(
        "\"Nowhere\" is no name of this house. Nothing was moved. Look at the list of names, or"
            + " bring the name in first.",
        taxa.sentenceProperty().get());
    taxa.targetProperty().set("Bovidae");
    taxa.move();
    assertEquals("Ovis stands under Bovidae now.", taxa.sentenceProperty().get());
  }

  @Test
  void aNameIsBroughtInBelowTheChosenOneAndAllGoOutAsATable() throws IOException {
    taxa.choose(Optional.of(new TaxonName("Ovis")));
    taxa.targetProperty().set("Ovis invented");
    taxa.addBelow();
    assertEquals("Ovis invented was brought in under Ovis.", taxa.sentenceProperty().get());
    signature.whyProperty().set("again");
    taxa.targetProperty().set("Ovis invented");
    taxa.addBelow();
    assertEquals(
        "Ovis invented is there already. Nothing was stored.",
        taxa.sentenceProperty().get().strip());
    Path file = folder.resolve("out.csv");
    taxa.save(file);
    assertTrue(
        Files.readString(file).contains("Ovis invented,,,\"Ovis Linnaeus, 1758\","),
        Files.readString(file));
    assertTrue(
        taxa.sentenceProperty().get().startsWith("out.csv was written:"),
        taxa.sentenceProperty().get());
  }
}
