package org.comparanda.gui.shelf.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.collections.MapChangeListener;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.CardField;
import org.comparanda.register.ChangeNote;
import org.comparanda.register.Standing;
import org.comparanda.storage.Collection;
import org.comparanda.taxon.HouseNames;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A card is stored whole or not at all. */
class CardViewModelTest {
  private static final AnimalId ONE = new AnimalId("T-1");

  @TempDir Path folder;
  private Collection collection;
  private final Signature signature = new Signature();
  private CardViewModel card;
  private int stored;

  @BeforeEach
  void open() {
    collection = KeepersRoom.collection(folder);
    card =
        new CardViewModel(
            KeepersRoom.of(collection), signature, Runnable::run, Runnable::run, () -> stored++);
    card.open(ONE);
    signature.whoProperty().set("p1");
    signature.whyProperty().set("looked again");
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private AnimalCard inTheCollection(String number) {
    return collection.register().card(new AnimalId(number)).orElseThrow();
  }

  @Test
  void whatWasTypedIsStoredAndStandsInTheHistory() {
    card.textProperty(CardField.SEX).set("female");
    card.textProperty(CardField.BODY_MASS).set("45 kg");
    card.save();
    assertEquals("2 changes were stored.", card.sentenceProperty().get());
    assertEquals("female", inTheCollection("T-1").animal().sex());
    assertEquals(2, card.history().size(), "as imported, and the change");
    assertEquals("", signature.whyProperty().get(), "the next change has a reason of its own");
    assertEquals(1, stored);
  }

  @Test
  void aWrongFieldIsMarkedAndNothingIsStored() {
    String before = collection.contentHash();
    card.textProperty(CardField.SEX).set("female");
    card.textProperty(CardField.HAND_OVER_BY).set("soon");
    card.save();
    assertEquals(
        "is no day. Write year, month, day: 2026-11-25.",
        card.problems().get(CardField.HAND_OVER_BY));
    assertEquals(
        "Nothing was stored: one field is wrong, marked above.", card.sentenceProperty().get());
    assertEquals(before, collection.contentHash());
    assertEquals("female", card.textProperty(CardField.SEX).get(), "what was typed stays");
  }

  @Test
  void whoListensToProblemsIsToldHoweverMuchMemoryWasCleared() {
    List<CardField> told = new ArrayList<>();
    card.problems()
        .addListener((MapChangeListener<CardField, String>) change -> told.add(change.getKey()));
    System.gc();
    card.textProperty(CardField.HAND_OVER_BY).set("soon");
    card.save();
    assertEquals(List.of(CardField.HAND_OVER_BY), told);
  }

  @Test
  void aChangeNeedsANameAndAReason() {
    signature.whyProperty().set(" ");
    card.textProperty(CardField.SEX).set("female");
    card.save();
    assertEquals("Say who changes it and why; nothing was stored.", card.sentenceProperty().get());
    assertEquals("", inTheCollection("T-1").animal().sex());
  }

  @Test
  void aDoubleIsLookedAtBeforeItIsMerged() {
    card.doubles().otherProperty().set("T-2");
    card.merge();
    assertTrue(inTheCollection("T-2").standing().onTheShelf());
    card.doubles().look();
    assertEquals(1, card.doubles().mergeProperty().get().orElseThrow().differing().size());
    card.doubles().otherProperty().set("T-3");
    card.doubles().otherProperty().set("T-2");
    card.merge();
    assertTrue(
        inTheCollection("T-2").standing().onTheShelf(), "typed again, so looked at again first");
    card.doubles().look();
    card.merge();
    assertEquals(new Standing.MergedInto(ONE), inTheCollection("T-2").standing());
  }

  @Test
  void aTaxonTypedUnderItsOldNameIsStoredUnderTheOneItHasNow() {
    collection
        .names()
        .rename(
            new TaxonName("Ovis aries"),
            new TaxonName("Ovis nova"),
            KeepersRoom.TABLES.taxa(),
            new ChangeNote(new PersonId("p1"), "new list"));
    HouseNames names = collection.names().all();
    card =
        new CardViewModel(
            KeepersRoom.of(
                collection, () -> names.on(KeepersRoom.TABLES.taxa()).value().orElseThrow()),
            signature,
            Runnable::run,
            Runnable::run,
            () -> {});
    card.openNew();
    card.numberProperty().set("T-9");
    card.textProperty(CardField.TAXON).set("Ovis aries");
    card.save();
    assertEquals(
        "T-9 was added. Ovis aries stands here as Ovis nova.", card.sentenceProperty().get());
    assertEquals("Ovis nova", inTheCollection("T-9").animal().taxon().orElseThrow().value());
  }

  @Test
  void anAnimalIsRetiredAndPutBack() {
    card.retireOrReturn();
    assertEquals(new Standing.Retired(), inTheCollection("T-1").standing());
    signature.whyProperty().set("it was lent, not lost");
    card.retireOrReturn();
    assertTrue(inTheCollection("T-1").standing().onTheShelf());
  }

  @Test
  void aNewAnimalNeedsANumberOfItsOwn() {
    card.openNew();
    card.save();
    assertEquals(
        "A new animal needs a catalogue number; nothing was stored.",
        card.sentenceProperty().get());
    card.numberProperty().set("T-9");
    card.textProperty(CardField.TAXON).set("Capra hircus");
    card.save();
    assertEquals("T-9 was added.", card.sentenceProperty().get());
    assertEquals("Capra hircus", inTheCollection("T-9").animal().taxon().orElseThrow().value());
  }
}
