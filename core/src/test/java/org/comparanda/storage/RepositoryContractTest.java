package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.Draft;
import org.comparanda.capture.LaggingDrafts;
import org.comparanda.capture.LineEnd;
import org.comparanda.capture.Place;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Reading;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Progress;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Call;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the repositories promise, whatever database stands behind them. All rows are invented. */
class RepositoryContractTest {
  private static final Instant NOW = Instant.parse("2026-11-25T10:15:30.123456Z");
  private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
  private static final PersonId ANN = new PersonId("p1");
  private static final BoneId BONE = new BoneId("HM-1");
  private static final MeasurementCode BD = new MeasurementCode("Bd");

  static final Animal FULL =
      new Animal(
          new AnimalId("A-2"),
          Optional.of(new TaxonName("Ovis aries")),
          Source.OWN_DRAWER,
          Optional.of("cabinet 3, drawer 7"),
          "female",
          "adult",
          "captive",
          Optional.of(1234.5),
          Optional.of(45_000.25),
          Set.of(Flag.CAST, Flag.GNAWED),
          "Invented; says \"ä, ö, 骨\" | and more",
          List.of(
              new ShelfBone(
                  new ElementKey("humerus"),
                  Side.LEFT,
                  Portion.DISTAL,
                  Set.of(Flag.CRUSHED, Flag.CUT),
                  Map.of(BD, 0.1 + 0.2, new MeasurementCode("bd"), 31.25)),
              new ShelfBone(
                  new ElementKey("femur"), Side.RIGHT, Portion.WHOLE, Set.of(), Map.of())));

  @TempDir Path folder;
  private Collection collection;

  @BeforeEach
  void open() {
    collection = Collection.create(folder.resolve("c.comparanda"), CLOCK);
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private static Animal plain(String id) {
    return new Animal(
        new AnimalId(id),
        Optional.empty(),
        Source.PUBLICATION,
        Optional.empty(),
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        "",
        List.of());
  }

  private static Reading take(String typed, double mm) {
    return new Reading(
        0,
        BONE,
        new ElementKey("humerus"),
        BD,
        Reading.Kind.TAKE,
        typed,
        Optional.of(new Length(mm)),
        ANN,
        NOW,
        1,
        false,
        Optional.of("caliper 4"),
        Optional.empty(),
        "");
  }

  @Test
  void animalsComeBackWithEveryField() {
    collection.animals().add(List.of(FULL, plain("A-1")));
    assertEquals(List.of(plain("A-1"), FULL), collection.animals().shelf().animals());
  }

  @Test
  void animalThatIsThereAlreadyKeepsAllOthersOut() {
    collection.animals().add(List.of(plain("A-1")));
    String before = collection.contentHash();
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> collection.animals().add(List.of(FULL, plain("A-1"))));
    assertEquals(
        "Catalogue number \"A-1\" is on the shelf already. Nothing was stored. Leave that animal"
            + " out, or give it a number of its own.",
        refused.getMessage());
    assertEquals(before, collection.contentHash());
  }

  @Test
  void animalThatComesTwiceKeepsAllOut() {
    String before = collection.contentHash();
    assertThrows(
        IllegalArgumentException.class, () -> collection.animals().add(List.of(FULL, FULL)));
    assertEquals(before, collection.contentHash());
  }

  @Test
  void additionThatIsStoppedStoresNothing() {
    String before = collection.contentHash();
    Progress stopAtTheEnd = animalsSoFar -> animalsSoFar < 2;
    assertEquals(
        0, collection.animals().add(List.of(FULL, plain("A-1")).iterator(), "x", stopAtTheEnd));
    assertEquals(before, collection.contentHash());
    assertEquals(0, collection.shelfVersion());
  }

  @Test
  void shelfVersionGrowsWithEachAddition() {
    collection.animals().add(List.of(FULL));
    assertEquals(1, collection.shelfVersion());
    collection.animals().add(List.of(plain("A-1")));
    assertEquals(2, collection.shelfVersion());
  }

  @Test
  void readingsComeBackInOrderWithEveryField() {
    Reading first = collection.readings().append(take("31,2 mm", 31.2));
    Reading withdrawn =
        collection
            .readings()
            .append(
                new Reading(
                    99,
                    BONE,
                    new ElementKey("humerus"),
                    BD,
                    Reading.Kind.WITHDRAWAL,
                    "",
                    Optional.empty(),
                    ANN,
                    NOW.plusSeconds(1),
                    1,
                    true,
                    Optional.empty(),
                    Optional.of(first.id()),
                    "slipped"));
    assertEquals(List.of(first, withdrawn), collection.readings().of(BONE));
    assertEquals(take("31,2 mm", 31.2).withId(1), first);
    assertEquals(2, withdrawn.id());
    assertEquals(List.of(), collection.readings().of(new BoneId("HM-2")));
  }

  @Test
  void readingsOfOneBurstGoInTogetherOrNotAtAll() {
    Reading pointsNowhere =
        new Reading(
            0,
            BONE,
            new ElementKey("humerus"),
            BD,
            Reading.Kind.CORRECTION,
            "31",
            Optional.of(new Length(31)),
            ANN,
            NOW,
            1,
            false,
            Optional.empty(),
            Optional.of(77L),
            "");
    assertThrows(
        RuntimeException.class,
        () -> collection.readings().append(List.of(take("30", 30), pointsNowhere)));
    assertEquals(List.of(), collection.readings().of(BONE));
  }

  @Test
  void traysAndTheirBonesKeepTheirOrderAndCanBeSavedAgain() {
    Tray second = tray("T-b", Tray.State.WAITING);
    Tray first = tray("T-a", Tray.State.ON_THE_BENCH);
    collection.trays().save(second);
    collection.trays().save(first);
    collection.trays().save(tray("T-b", Tray.State.DONE));
    assertEquals(List.of(tray("T-b", Tray.State.DONE), first), collection.trays().all());

    TrayBone stopped = bone("HM-9", TrayBone.Standing.STOPPED);
    TrayBone open = bone("HM-1", TrayBone.Standing.OPEN);
    collection.trays().save(bone("HM-9", TrayBone.Standing.OPEN));
    collection.trays().save(open);
    collection.trays().save(stopped);
    assertEquals(List.of(stopped, open), collection.trays().bonesOf(new TrayId("T-a")));
    assertEquals(Optional.of(stopped), collection.trays().bone(new BoneId("HM-9")));
    assertEquals(Optional.empty(), collection.trays().bone(new BoneId("HM-2")));
  }

  @Test
  void everyCallIsKept() {
    Call one = collection.trays().record(call("Ovis aries", Qualifier.CF));
    Call two = collection.trays().record(call("Capra hircus", Qualifier.NONE));
    assertEquals(List.of(one, two), collection.trays().callsOn(BONE));
    assertEquals(call("Ovis aries", Qualifier.CF).withId(1), one);
  }

  @Test
  void nameCanBeBlankedWithoutTouchingRows() {
    collection.people().save(new Person(ANN, "Invented Ann"));
    Reading kept = collection.readings().append(take("30", 30));
    collection.people().save(new Person(ANN, ""));
    assertEquals(Optional.of(new Person(ANN, "")), collection.people().person(ANN));
    assertEquals(List.of(kept), collection.readings().of(BONE));
  }

  @Test
  void personOfARowIsKnownEvenWithoutAName() {
    collection.readings().append(take("30", 30));
    assertEquals(List.of(new Person(ANN, "")), collection.people().all());
  }

  @Test
  void draftOfABenchIsReplacedAndCleared() {
    Draft half = new Draft(BONE, new ElementKey("humerus"), new Place(BD, 2), "12,");
    Draft more = new Draft(BONE, new ElementKey("humerus"), new Place(BD, 2), "12,3");
    collection.drafts().save("bench 1", half);
    collection.drafts().save("bench 1", more);
    assertEquals(Optional.of(more), collection.drafts().of("bench 1"));
    assertEquals(Optional.empty(), collection.drafts().of("bench 2"));
    collection.drafts().clear("bench 1");
    assertEquals(Optional.empty(), collection.drafts().of("bench 1"));
  }

  @Test
  void laggingDraftKeepsTheNewestAndForgetsWhatWasCleared() {
    List<Runnable> later = new ArrayList<>();
    LaggingDrafts lagging = new LaggingDrafts(collection.drafts(), later::add);
    Draft half = new Draft(BONE, new ElementKey("humerus"), new Place(BD, 1), "1");
    Draft more = new Draft(BONE, new ElementKey("humerus"), new Place(BD, 1), "12");
    lagging.save("bench 1", half);
    lagging.save("bench 1", more);
    assertEquals(Optional.of(more), lagging.of("bench 1"));
    assertEquals(Optional.empty(), collection.drafts().of("bench 1"));
    assertEquals(1, later.size());
    later.get(0).run();
    assertEquals(Optional.of(more), collection.drafts().of("bench 1"));
    lagging.save("bench 1", half);
    lagging.clear("bench 1");
    later.get(1).run();
    assertEquals(Optional.empty(), collection.drafts().of("bench 1"));
  }

  @Test
  void caliperCardsComeBackWithEveryField() {
    CaliperCard full =
        new CaliperCard(
            "caliper 4",
            "S-1",
            LengthUnit.INCH,
            ',',
            1,
            4,
            LineEnd.CRLF,
            new Length(0.0127),
            Optional.of(new Length(150)),
            Optional.of(LocalDate.of(2026, 11, 25)));
    CaliperCard plain =
        new CaliperCard(
            "caliper 1",
            "",
            LengthUnit.MILLIMETRE,
            '.',
            2,
            2,
            LineEnd.NONE,
            new Length(0.01),
            Optional.empty(),
            Optional.empty());
    collection.caliperCards().save(full);
    collection.caliperCards().save(plain);
    assertEquals(List.of(plain, full), collection.caliperCards().all());
    collection.caliperCards().save(full.withReach(new Length(200)));
    assertEquals(
        Optional.of(full.withReach(new Length(200))), collection.caliperCards().card("caliper 4"));
  }

  @Test
  void everyRowIsThereAfterOpeningAgain() {
    collection.animals().add(List.of(FULL));
    Reading kept = collection.readings().append(take("30", 30));
    String before = collection.contentHash();
    collection.close();
    collection = Collection.open(folder.resolve("c.comparanda"), CLOCK);
    assertEquals(before, collection.contentHash());
    assertEquals(List.of(FULL), collection.animals().shelf().animals());
    assertEquals(List.of(kept), collection.readings().of(BONE));
    assertTrue(collection.caution().isEmpty(), "the test folder lies on this computer");
  }

  static Tray tray(String id, Tray.State state) {
    return new Tray(new TrayId(id), "lot", "name " + id, BoneAge.FOSSIL, "pit 4", "arsenic", state);
  }

  static TrayBone bone(String id, TrayBone.Standing standing) {
    return new TrayBone(
        new BoneId(id),
        new TrayId("T-a"),
        Optional.of(new AnimalId("A-2")),
        new ElementKey("humerus"),
        Side.NOT_KNOWN,
        Portion.SHAFT,
        new BoneState(Fusion.FUSED, Fusion.UNFUSED, Set.of(Flag.BURNT)),
        standing,
        "remarks");
  }

  static Call call(String taxon, Qualifier qualifier) {
    return new Call(0, BONE, new TaxonName(taxon), qualifier, ANN, NOW, "by eye", true);
  }
}
