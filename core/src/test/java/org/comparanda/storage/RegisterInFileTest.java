package org.comparanda.storage;

import static org.comparanda.register.Invented.code;
import static org.comparanda.register.Invented.sheep;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.HeldBone;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.daybook.Change;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.daybook.Verdict;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BodyMeasure;
import org.comparanda.register.BoneEdit;
import org.comparanda.register.BonePlace;
import org.comparanda.register.CardEdit;
import org.comparanda.register.CardField;
import org.comparanda.register.ChangeNote;
import org.comparanda.register.Restriction;
import org.comparanda.register.SkeletonBone;
import org.comparanda.register.Standing;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonTree;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Changes of the register stay whole, with old and new value, and nothing is deleted. */
class RegisterInFileTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T10:15:30Z"), ZoneOffset.UTC);
  private static final ChangeNote NOTE = new ChangeNote(new PersonId("p1"), "looked again");
  private static final ElementKey HUMERUS = new ElementKey("humerus");
  private static final AnimalId FIRST = new AnimalId("A-1");
  private static final AnimalId SECOND = new AnimalId("A-2");
  private static final AnimalCard LEFT = sheep("A-1", Side.LEFT, Map.of(code("GL"), 150.0));
  private static final AnimalCard RIGHT = sheep("A-2", Side.RIGHT, Map.of(code("GL"), 151.0));

  @TempDir Path folder;
  private Collection collection;

  @BeforeEach
  void open() {
    collection = Collection.create(folder.resolve("c.comparanda"), CLOCK);
    collection.animals().add(List.of(LEFT.animal(), RIGHT.animal()));
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private AnimalCard card(AnimalId id) {
    return collection.register().card(id).orElseThrow();
  }

  private List<String> lastEntry(AnimalId id) {
    List<DayBookEntry> history = collection.register().history(id);
    return List.of(Change.read(history.get(history.size() - 1).content()).words().split("; ", -1));
  }

  private void store(AnimalCard after) {
    assertInstanceOf(
        List.class,
        collection.register().change(card(after.id()), after, NOTE).value().orElseThrow());
  }

  private static AnimalCard withValue(AnimalCard card, Optional<Double> mm) {
    return new BoneEdit(
            new ElementKey("humerus"),
            Side.LEFT,
            Portion.WHOLE,
            Optional.empty(),
            Map.of(code("GL"), mm))
        .apply(card, ReferenceTables.shipped().protocol())
        .value()
        .orElseThrow();
  }

  @Test
  void aFullCardComesBackWithEveryField() {
    AnimalCard full =
        LEFT.withAnimal(LEFT.animal().withBodyMassG(Optional.of(45_000.0)).withSex("female"))
            .withSourceName("own")
            .withMass(
                new BodyMeasure(
                    Optional.of(LocalDate.of(2026, 3, 1)), "balance", BodyMeasure.Kind.FRESH))
            .withRestriction(
                new Restriction(
                    "P 17",
                    "stays here",
                    Restriction.Export.FORBIDDEN,
                    Optional.of(LocalDate.of(2027, 1, 1))));
    store(full);
    assertEquals(full, card(FIRST));
    assertEquals(List.of(full, RIGHT), collection.register().all());
  }

  @Test
  void aChangeStandsInTheDayBookWithOldAndNewValueWhoAndWhy() {
    store(LEFT.withAnimal(LEFT.animal().withSex("female")));
    assertEquals(
        List.of("changed", "sex: \"\" -> \"female\"", "why: looked again"), lastEntry(FIRST));
    assertInstanceOf(Verdict.Sound.class, collection.verifyDayBook());
  }

  @Test
  void aChangedCardIsNotWrittenOverUnseen() {
    AnimalCard seen = card(FIRST);
    store(LEFT.withAnimal(LEFT.animal().withSex("female")));
    String before = collection.contentHash();
    assertEquals(
        "A-1 was changed meanwhile by somebody else. Nothing was stored.",
        collection
            .register()
            .change(seen, seen.withSourceName("x"), NOTE)
            .fold(done -> "stored", none -> none.reason()));
    assertEquals(before, collection.contentHash());
  }

  @Test
  void theLatestValueOfAMeasurementCountsAndAWithdrawnOneIsGone() {
    store(withValue(card(FIRST), Optional.of(149.0)));
    store(withValue(card(FIRST), Optional.of(148.5)));
    assertEquals(
        Map.of(code("GL"), 148.5),
        collection.animals().shelf().animal(FIRST).orElseThrow().bones().get(0).values());
    store(withValue(card(FIRST), Optional.empty()));
    assertEquals(Map.of(), card(FIRST).animal().bones().get(0).values());
    store(withValue(card(FIRST), Optional.of(150.0)));
    assertEquals(LEFT, card(FIRST));
    assertEquals(5, collection.register().history(FIRST).size());
  }

  @Test
  void aNewBoneIsAddedWithItsFlags() {
    AnimalCard more =
        new BoneEdit(
                new ElementKey("femur"),
                Side.LEFT,
                Portion.DISTAL,
                Optional.of(Set.of(Flag.CRUSHED)),
                Map.of(code("Bd"), Optional.of(40.0)))
            .apply(card(FIRST), ReferenceTables.shipped().protocol())
            .value()
            .orElseThrow();
    store(more);
    assertEquals(more, card(FIRST));
    assertEquals(2, collection.animals().shelf().animal(FIRST).orElseThrow().bones().size());
  }

  @Test
  void aRetiredAnimalIsOffTheShelfAndStillFound() {
    collection.register().retire(FIRST, NOTE);
    assertEquals(List.of(RIGHT.animal()), collection.animals().shelf().animals());
    assertEquals(new Standing.Retired(), card(FIRST).standing());
    assertEquals(2, collection.register().all().size());
    assertEquals(
        List.of("changed", "standing: \"on the shelf\" -> \"retired\"", "why: looked again"),
        lastEntry(FIRST));
    collection.register().bringBack(FIRST, NOTE);
    assertEquals(2, collection.animals().shelf().animals().size());
  }

  @Test
  void twoNumbersOfOneAnimalBecomeOneAndBothAreFound() {
    collection.trays().save(Trayful.TRAY);
    collection.trays().save(Trayful.bone("B-1", SECOND));
    assertTrue(collection.register().merge(FIRST, SECOND, NOTE).value().isPresent());
    assertEquals(
        List.of(
            LEFT.animal()
                .withBones(List.of(LEFT.animal().bones().get(0), RIGHT.animal().bones().get(0)))),
        collection.animals().shelf().animals());
    assertEquals(new Standing.MergedInto(FIRST), card(SECOND).standing());
    assertEquals(RIGHT.animal(), card(SECOND).animal(), "its record stays");
    assertEquals(
        Optional.of(FIRST),
        collection.trays().bone(new BoneId("B-1")).orElseThrow().animal(),
        "a practice bone follows its animal");
    assertEquals("took in A-2", lastEntry(FIRST).get(0));
    assertInstanceOf(Verdict.Sound.class, collection.verifyDayBook());
  }

  @Test
  void aBoneMeasuredUnderTheSecondNumberGoesAlong() {
    SkeletonBone bone =
        new SkeletonBone(
            collection
                .skeletons()
                .number(SECOND, new BonePlace(HUMERUS, Side.RIGHT, Portion.WHOLE)),
            SECOND,
            new HeldBone(HUMERUS, Side.RIGHT, Portion.WHOLE, BoneState.notRecorded()));
    collection.skeletons().save(bone, NOTE.who());
    String before = collection.contentHash();
    assertTrue(collection.register().wouldMerge(FIRST, SECOND).value().isPresent());
    assertEquals(before, collection.contentHash(), "looked at only");
    assertTrue(collection.register().merge(FIRST, SECOND, NOTE).value().isPresent());
    assertEquals(List.of(), collection.skeletons().of(SECOND));
    assertEquals(
        List.of(new SkeletonBone(bone.id(), FIRST, bone.held())), collection.skeletons().of(FIRST));
    assertEquals(
        bone.id(),
        collection.skeletons().number(FIRST, bone.place()),
        "measured on under the number that its readings have");
    assertInstanceOf(Verdict.Sound.class, collection.verifyDayBook());
  }

  @Test
  void aSecondNumberStandsForTheFirstOnTheShelf() {
    collection.register().merge(FIRST, SECOND, NOTE);
    Shelf shelf = collection.animals().shelf();
    assertEquals(FIRST, shelf.number(SECOND));
    assertEquals(FIRST, shelf.number(FIRST));
    assertEquals(List.of(), shelf.without(SECOND).animals());
  }

  @Test
  void aSecondNumberIsNoLongerChanged() {
    collection.register().merge(FIRST, SECOND, NOTE);
    AnimalCard gone = card(SECOND);
    assertEquals(
        "A-2 is merged into A-1. Nothing was stored.",
        collection
            .register()
            .change(gone, gone.withSourceName("x"), NOTE)
            .fold(done -> "stored", none -> none.reason()));
  }

  @Test
  void theFirstEntryOfAnAddedAnimalSaysAllThatWasSaidOfIt() {
    AnimalCard third = sheep("A-3", Side.LEFT, Map.of(code("GL"), 140.0));
    collection.register().add(third.withAnimal(third.animal().withSex("female")), NOTE);
    assertEquals(
        List.of(
            "added",
            "taxon: \"\" -> \"Ovis aries\"",
            "sex: \"\" -> \"female\"",
            "age_class: \"\" -> \"adult\"",
            "bone: \"\" -> \"humerus left\"",
            "humerus left GL: \"\" -> \"140\"",
            "why: looked again"),
        lastEntry(new AnimalId("A-3")));
  }

  @Test
  void aNumberIsGivenOnce() {
    collection.register().retire(FIRST, NOTE);
    assertEquals(
        "Catalogue number \"A-1\" was given already. Nothing was stored.",
        collection.register().add(LEFT, NOTE).fold(done -> "stored", none -> none.reason()));
    AnimalCard third = sheep("A-3", Side.LEFT, Map.of(code("GL"), 140.0)).withSourceName("x");
    assertTrue(collection.register().add(third, NOTE).value().isPresent());
    assertEquals(third, card(new AnimalId("A-3")));
  }

  @Test
  void everyChangeMakesANewVersionOfTheShelf() {
    long before = collection.shelfVersion();
    store(LEFT.withAnimal(LEFT.animal().withSex("female")));
    collection.register().retire(SECOND, NOTE);
    assertEquals(before + 2, collection.shelfVersion());
  }

  @Test
  void aRefusedEditStoresNothing() {
    String before = collection.contentHash();
    new CardEdit(TaxonTree.empty(), Set.of(), LocalDate.of(2026, 11, 25))
        .apply(card(FIRST), Map.of(CardField.SEX, "female", CardField.FLAGS, "plaster"));
    assertEquals(before, collection.contentHash());
  }

  /** A tray with a practice bone. */
  private static final class Trayful {
    static final org.comparanda.tray.Tray TRAY =
        new org.comparanda.tray.Tray(
            new org.comparanda.tray.TrayId("T"),
            "lot",
            "tray",
            org.comparanda.bone.BoneAge.RECENT,
            "invented",
            "",
            org.comparanda.tray.Tray.State.WAITING);

    static org.comparanda.tray.TrayBone bone(String id, AnimalId animal) {
      return new org.comparanda.tray.TrayBone(
          new BoneId(id),
          TRAY.id(),
          Optional.of(animal),
          new ElementKey("humerus"),
          Side.RIGHT,
          Portion.WHOLE,
          BoneState.notRecorded(),
          org.comparanda.tray.TrayBone.Standing.OPEN,
          "");
    }
  }
}
