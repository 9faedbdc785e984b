package org.comparanda.gui.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.gui.text.Words;
import org.comparanda.pile.Arrival;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.HouseNames;
import org.comparanda.taxon.HouseTaxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invented arrivals in a collection of their own. */
class PileViewModelTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private Collection collection;
  private TaxonTree taxa = TaxonTree.empty();
  private PileViewModel model;
  private final List<String> printed = new ArrayList<>();

  @BeforeEach
  void open() {
    collection = Collection.create(folder.resolve("room.comparanda"), CLOCK);
    model = model((file, entries) -> entries.forEach(e -> printed.add(e.arrival().number())));
    model.add("A", "Ovis aries", "", "a farm", "");
    model.add("B", "Capra hircus", "skeleton", "a farm", "P 1");
  }

  private PileViewModel model(PileRoom.Printing printing) {
    return new PileViewModel(
        new PileRoom(
            collection.pile(),
            () -> collection.animals().shelf(),
            () -> taxa,
            printing,
            Words.of("pile", Locale.ENGLISH),
            Locale.ENGLISH,
            CLOCK),
        Runnable::run,
        Runnable::run);
  }

  @AfterEach
  void close() {
    collection.close();
  }

  @Test
  void whatIsAskedForMovesUpAndStaysOpen() {
    model.open(Optional.of(model.entries().get(1)));
    model.ask("anna", "teeth");
    assertEquals(List.of("B", "A"), numbers());
    assertEquals("B", model.openProperty().get().orElseThrow().arrival().number());
    assertTrue(model.entries().get(0).why().startsWith("Asked for by anna: teeth."));
  }

  @Test
  void whatGoesOntoTheShelfLeavesThePile() {
    model.stage(Arrival.Stage.ON_THE_SHELF);
    assertEquals(List.of("B"), numbers());
  }

  @Test
  void aNumberIsGivenOnceAndNothingIsAddedHalf() {
    model.add("A", "Bos taurus", "", "elsewhere", "");
    assertEquals("A is on the pile already.", model.noticeProperty().get());
    model.add("C", "", "", "", "");
    assertEquals("Number, taxon and from are needed.", model.noticeProperty().get());
    assertEquals(List.of("A", "B"), numbers());
  }

  @Test
  void itPrintsInItsOrderOrSaysThatItCouldNot() {
    model.print(folder.resolve("pile.pdf"));
    assertEquals(List.of("A", "B"), printed);
    PileViewModel broken =
        model(
            (file, entries) -> {
              throw new IOException("no disk");
            });
    broken.print(folder.resolve("pile.pdf"));
    assertEquals("pile.pdf can't be written. Choose another place.", broken.noticeProperty().get());
  }

  private List<String> numbers() {
    return model.entries().stream().map(e -> e.arrival().number()).toList();
  }

  @Test
  void anOldNameIsKeptAsTypedAndItIsSaidWhatTheTaxonIsCalledHere() {
    taxa =
        HouseNames.of(
                List.of(
                    HouseTaxon.blank(new TaxonName("Ovis antiqua"), "invented")
                        .synonymOf(new TaxonName("Ovis aries"))))
            .on(ReferenceTables.shipped().taxa())
            .value()
            .orElseThrow();
    model.add("C", "Ovis antiqua", "", "a farm", "");
    assertTrue(
        model.noticeProperty().get().endsWith("Ovis antiqua stands here as Ovis aries."),
        model.noticeProperty().get());
  }
}
