package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.daybook.Verdict;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Progress;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.Restriction;
import org.comparanda.register.SetDown;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A long table of invented animals that is stopped on its way into a collection. */
class TableIntakeTest {
  private static final Instant NOW = Instant.parse("2026-11-25T12:00:00Z");
  private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
  private static final int CHUNK = 50;
  private static final int ANIMALS = 2 * CHUNK + 7;
  private static final String CONTENT = "0123456789abcdef".repeat(4);
  private static final List<AnimalCard> CARDS = cards(ANIMALS, "");

  @TempDir Path folder;
  private Path file;
  private String before = "";

  @BeforeEach
  void aCollectionWithOneAnimal() {
    file = folder.resolve("room[1].comparanda");
    try (Collection room = Collection.create(file, CLOCK)) {
      room.tableIntake(CHUNK).bringIn("", "first.csv", cards(1, "first "), Progress.toTheEnd());
      before = room.contentHash();
    }
  }

  @Test
  void goneOnWithItIsEqualToOneThatWasNeverStopped() throws IOException {
    assertEquals(0, bringIn(CARDS, soFar -> soFar < CHUNK));
    assertEquals(Optional.of(setDown(CHUNK)), begun());
    assertEquals(0, bringIn(CARDS, soFar -> soFar < 2 * CHUNK));
    assertEquals(Optional.of(setDown(2 * CHUNK)), begun());
    List<Long> told = new ArrayList<>();
    assertEquals(ANIMALS, bringIn(CARDS, told::add));
    Path never = folder.resolve("never.comparanda");
    try (Collection room = Collection.create(never, CLOCK)) {
      room.tableIntake(CHUNK).bringIn("", "first.csv", cards(1, "first "), Progress.toTheEnd());
      room.tableIntake(CHUNK).bringIn(CONTENT, "large.csv", CARDS, Progress.toTheEnd());
    }
    assertAll(
        () -> assertEquals(2L * CHUNK, told.get(0)),
        () -> assertEquals(content(never), content(file)),
        () -> assertEquals(cards(never), cards(file)),
        () -> assertTrue(verified(file)),
        () -> assertEquals(List.of(), asides()));
  }

  @Test
  void aLongTableIsStoredAsManyShortOnesWould() {
    bringIn(CARDS, Progress.toTheEnd());
    List<AnimalCard> all = new ArrayList<>(cards(1, "first "));
    all.addAll(CARDS);
    assertEquals(Set.copyOf(all), Set.copyOf(cards(file)));
  }

  @Test
  void stoppedAnywhereItLeavesTheContentAsItWas() {
    for (long at : new long[] {0, CHUNK, ANIMALS}) {
      assertEquals(0, bringIn(CARDS, soFar -> soFar < at));
      assertEquals(before, content(file));
    }
    int[] asked = {0};
    assertEquals(0, bringIn(CARDS, soFar -> ++asked[0] < 2), "stopped while it is moved in");
    assertEquals(before, content(file));
    assertEquals(ANIMALS, bringIn(CARDS, Progress.toTheEnd()));
  }

  @Test
  void whatIsReadOtherwiseNowIsNotUsed() {
    bringIn(CARDS, soFar -> soFar < CHUNK);
    List<AnimalCard> otherwise = cards(ANIMALS, "");
    AnimalCard third = otherwise.get(2);
    otherwise.set(2, third.withAnimal(third.animal().withBones(List.of())));
    List<Long> told = new ArrayList<>();
    assertEquals(ANIMALS, bringIn(otherwise, told::add));
    assertEquals(0, told.get(0));
    assertTrue(cards(file).contains(otherwise.get(2)));
    assertFalse(cards(file).contains(third));
  }

  @Test
  void ofAnotherNameItBeginsAnewSinceTheNameIsKeptWithEachValue() {
    bringIn(CARDS, soFar -> soFar < CHUNK);
    List<Long> told = new ArrayList<>();
    try (Collection room = Collection.open(file, CLOCK)) {
      room.tableIntake(CHUNK).bringIn(CONTENT, "renamed.csv", CARDS, told::add);
    }
    assertEquals(0, told.get(0));
  }

  @Test
  void forgottenItBeginsFromTheStart() throws IOException {
    bringIn(CARDS, soFar -> soFar < CHUNK);
    try (Collection room = Collection.open(file, CLOCK)) {
      room.tableIntake(CHUNK).forget(CONTENT);
    }
    assertEquals(Optional.empty(), begun());
    assertEquals(List.of(), asides());
  }

  @Test
  void whatNobodyWentOnWithGoesAfterItsTime() throws IOException {
    bringIn(CARDS, soFar -> soFar < CHUNK);
    Path aside = asides().get(0);
    Files.setLastModifiedTime(
        aside, java.nio.file.attribute.FileTime.from(NOW.minus(Duration.ofDays(31))));
    try (Collection room = Collection.open(file, CLOCK)) {
      room.tableIntake(CHUNK).bringIn("f".repeat(64), "b.csv", cards(3, "b "), Progress.toTheEnd());
    }
    assertEquals(List.of(), asides());
  }

  @Test
  void aDamagedOrHalfMadeOneIsAsGoodAsNone() throws IOException {
    for (String rest : List.of("", "no database at all, but long enough to be looked at twice")) {
      Files.writeString(AsideFile.place(file, CONTENT), rest);
      assertEquals(Optional.empty(), begun());
    }
    assertEquals(ANIMALS, bringIn(CARDS, Progress.toTheEnd()));
  }

  @Test
  void aNumberGivenMeanwhileRefusesAllAndKeepsWhatIsSetDown() {
    bringIn(CARDS, soFar -> soFar < CHUNK);
    String then;
    try (Collection room = Collection.open(file, CLOCK)) {
      room.tableIntake(CHUNK).bringIn("", "b.csv", List.of(CARDS.get(7)), Progress.toTheEnd());
      then = room.contentHash();
    }
    String said =
        assertThrows(IllegalArgumentException.class, () -> bringIn(CARDS, Progress.toTheEnd()))
            .getMessage();
    assertAll(
        () -> assertTrue(said.contains("\"" + CARDS.get(7).id() + "\""), said),
        () -> assertEquals(then, content(file)));
  }

  private long bringIn(List<AnimalCard> cards, Progress progress) {
    try (Collection room = Collection.open(file, CLOCK)) {
      return room.tableIntake(CHUNK).bringIn(CONTENT, "large.csv", cards, progress);
    }
  }

  private Optional<SetDown> begun() {
    try (Collection room = Collection.open(file, CLOCK)) {
      return room.tableIntake(CHUNK).begun(CONTENT);
    }
  }

  private static SetDown setDown(int animals) {
    return new SetDown("large.csv", NOW, animals, ANIMALS);
  }

  private static String content(Path collection) {
    try (Collection room = Collection.open(collection, CLOCK)) {
      return room.contentHash();
    }
  }

  private static List<AnimalCard> cards(Path collection) {
    try (Collection room = Collection.open(collection, CLOCK)) {
      return room.register().all();
    }
  }

  private static boolean verified(Path collection) {
    try (Collection room = Collection.open(collection, CLOCK)) {
      return room.verifyDayBook() instanceof Verdict.Sound;
    }
  }

  private List<Path> asides() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().contains(".import")).toList();
    }
  }

  /** Every seventh with terms, every fifth a cast, every third without body. */
  private static List<AnimalCard> cards(int animals, String prefix) {
    List<AnimalCard> cards = new ArrayList<>();
    for (int i = 0; i < animals; i++) {
      Animal animal =
          new Animal(
              new AnimalId(prefix + "N-" + i),
              i % 11 == 0 ? Optional.empty() : Optional.of(new TaxonName("Ovis aries")),
              i % 2 == 0 ? Source.OWN_DRAWER : Source.ANOTHER_HOUSE,
              i % 2 == 0 ? Optional.of("D " + i % 9) : Optional.empty(),
              "f",
              "adult",
              "",
              i % 3 == 0 ? Optional.empty() : Optional.of(900.1 + i / 7.0),
              Optional.empty(),
              i % 5 == 0 ? Set.of(Flag.CAST, Flag.CRUSHED) : Set.of(),
              "no. " + i,
              List.of(bone(Side.LEFT, i), bone(Side.RIGHT, i + 1)));
      AnimalCard card = AnimalCard.of(animal);
      cards.add(
          i % 7 == 0
              ? card.withRestriction(
                  new Restriction(
                      "P-" + i, "as lent", Restriction.Export.FORBIDDEN, Optional.empty()))
              : card);
    }
    return cards;
  }

  private static ShelfBone bone(Side side, int i) {
    return new ShelfBone(
        new ElementKey("humerus"),
        side,
        Portion.WHOLE,
        Set.of(),
        Map.of(new MeasurementCode("GL"), 150 + i / 3.0, new MeasurementCode("Bd"), 30 + i / 13.0));
  }
}
