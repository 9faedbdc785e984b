package org.comparanda.gui.oldcards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.gui.oldcards.OldCardsViewModel.Which;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.BoneId;
import org.comparanda.oldcards.CardParser;
import org.comparanda.oldcards.Part;
import org.comparanda.storage.Collection;
import org.comparanda.tables.CardWordTable;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invented cards in a collection of their own. */
class OldCardsViewModelTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);
  private static final ReferenceTables TABLES = ReferenceTables.shipped();

  @TempDir Path folder;
  private Collection collection;
  private OldCardsViewModel model;

  @BeforeEach
  void open() throws IOException {
    collection = Collection.create(folder.resolve("room.comparanda"), CLOCK);
    model =
        new OldCardsViewModel(
            new CardsRoom(
                collection.oldCards(),
                collection.trays(),
                () -> new CardParser(CardWordTable.shipped(TABLES.protocol(), TABLES.taxa())),
                TABLES.protocol(),
                Words.of("oldcards", Locale.ENGLISH),
                CLOCK),
            Runnable::run,
            Runnable::run);
    model.bringIn(
        Files.writeString(
            folder.resolve("list.txt"),
            "sheep, humerus left\ngoat, femur right\nBox 3: pig tibia\nhuman femur\n"));
  }

  @AfterEach
  void close() {
    collection.close();
  }

  @Test
  void theOpenCardShowsEveryWordWithWhatItWasReadAs() {
    model.open(Optional.of(model.listed().get(2)));
    assertEquals(
        List.of(Part.LEFT_OVER, Part.LEFT_OVER, Part.PASSED_OVER, Part.TAXON, Part.ELEMENT),
        model.shownProperty().get().orElseThrow().stretches().stream()
            .map(CardShown.Stretch::part)
            .toList());
  }

  @Test
  void nothingIsAcceptedBeforeItIsSaidWhoDoes() {
    model.accept();
    assertEquals("Say who accepts and onto which tray.", model.noticeProperty().get());
    assertEquals(4, model.listed().size());
  }

  @Test
  void allPlainCardsOfOneShapeAreAcceptedTogether() {
    model.personProperty().set("anna");
    assertEquals(2, model.shownProperty().get().orElseThrow().alike());
    model.acceptAlike();
    assertEquals(
        "2 cards accepted: 2 bones with a call on old-cards.", model.noticeProperty().get());
    assertEquals(2, model.listed().size());
    assertEquals(1, collection.trays().callsOn(new BoneId("card-1")).size());
  }

  @Test
  void thePersonsWordStandsInPlaceOfWhatWasRead() {
    model.personProperty().set("anna");
    model.taxonProperty().set("Ovis cf. aries");
    model.elementProperty().set("radius");
    model.accept();
    assertEquals(
        "radius", collection.trays().bone(new BoneId("card-1")).orElseThrow().element().value());
  }

  @Test
  void aCardThatNamesHumansIsNotAccepted() {
    model.personProperty().set("anna");
    model.open(Optional.of(model.listed().get(3)));
    model.accept();
    assertEquals(
        "Card 4 names human remains. Leave it, and show it to the person responsible.",
        model.noticeProperty().get());
  }

  @Test
  void aRefusalIsKeptWithItsReason() {
    model.personProperty().set("anna");
    model.reasonProperty().set("lost");
    model.refuse();
    model.show(Which.REFUSED);
    assertEquals("lost", model.listed().get(0).latest().orElseThrow().note());
  }

  @Test
  void aListOfAnOldWindowsIsReadWhenItIsSaidSo() throws IOException {
    Path old = folder.resolve("windows.csv");
    Files.write(old, "Nr;Text\n1;Schaf, Hügel\n".getBytes(Charset.forName("windows-1252")));
    model.columnProperty().set("Text");
    model.bringIn(old);
    assertTrue(model.noticeProperty().get().contains("windows-1252"), model.noticeProperty().get());
    model.encodingProperty().set(Charset.forName("windows-1252"));
    model.bringIn(old);
    assertEquals(
        "1 of 1 cards are new; every text is kept as found.", model.noticeProperty().get());
  }
}
