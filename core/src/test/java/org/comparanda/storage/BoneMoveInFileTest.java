package org.comparanda.storage;

import static org.comparanda.register.Invented.code;
import static org.comparanda.register.Invented.sheep;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.HeldBone;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.daybook.Change;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.daybook.Verdict;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Reading;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.ShelfBone;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BoneMove;
import org.comparanda.register.BonePlace;
import org.comparanda.register.ChangeNote;
import org.comparanda.register.SkeletonBone;
import org.comparanda.statistics.Outcome;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The left humerus of A-1 (GL 150) was registered under the wrong side or element. */
class BoneMoveInFileTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T10:15:30Z"), ZoneOffset.UTC);
  private static final PersonId KEEPER = new PersonId("p1");
  private static final ChangeNote NOTE = new ChangeNote(KEEPER, "sides were taken for each other");
  private static final AnimalId ANIMAL = new AnimalId("A-1");
  private static final BonePlace LEFT_HUMERUS = place("humerus", Side.LEFT);
  private static final BonePlace RIGHT_HUMERUS = place("humerus", Side.RIGHT);
  private static final BonePlace LEFT_FEMUR = place("femur", Side.LEFT);
  private static final BoneId NUMBER = new BoneId("A-1 humerus left");

  @TempDir Path folder;
  private Collection collection;

  @BeforeEach
  void open() {
    collection = Collection.create(folder.resolve("c.comparanda"), CLOCK);
    collection.animals().add(List.of(sheep("A-1", Side.LEFT, Map.of(code("GL"), 150.0)).animal()));
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private static BonePlace place(String element, Side side) {
    return new BonePlace(new ElementKey(element), side, Portion.WHOLE);
  }

  private AnimalCard card() {
    return collection.register().card(ANIMAL).orElseThrow();
  }

  private Outcome<List<org.comparanda.register.Change>> move(BonePlace from, BonePlace to) {
    return BoneMove.of(from, to, ReferenceTables.shipped().protocol())
        .then(move -> collection.register().move(card(), move, NOTE));
  }

  private void measured() {
    HeldBone said =
        new HeldBone(
            LEFT_HUMERUS.element(),
            Side.LEFT,
            Portion.WHOLE,
            new BoneState(Fusion.FUSED, Fusion.UNFUSED, Set.of(Flag.GNAWED)));
    collection.skeletons().save(new SkeletonBone(NUMBER, ANIMAL, said), KEEPER);
    collection
        .readings()
        .append(
            new Reading(
                0,
                NUMBER,
                LEFT_HUMERUS.element(),
                code("GL"),
                Reading.Kind.TAKE,
                "150",
                Optional.of(new Length(150)),
                KEEPER,
                CLOCK.instant(),
                1,
                false,
                Optional.empty(),
                Optional.empty(),
                ""));
  }

  @Test
  void aMovedBoneKeepsItsValuesItsReadingsAndItsNumber() {
    measured();
    assertInstanceOf(List.class, move(LEFT_HUMERUS, RIGHT_HUMERUS).value().orElseThrow());
    ShelfBone bone = card().animal().bones().get(0);
    assertEquals(RIGHT_HUMERUS, BonePlace.of(bone));
    assertEquals(Map.of(code("GL"), 150.0), bone.values());
    assertEquals(NUMBER, collection.skeletons().number(ANIMAL, RIGHT_HUMERUS));
    assertEquals(
        List.of("150"), collection.readings().of(NUMBER).stream().map(Reading::asTyped).toList());
    assertInstanceOf(Verdict.Sound.class, collection.verifyDayBook());
  }

  @Test
  void theDayBookSaysFromWhereToWhereByWhomAndWhy() {
    measured();
    move(LEFT_HUMERUS, LEFT_FEMUR);
    List<DayBookEntry> history = collection.register().history(ANIMAL);
    Change last = Change.read(history.get(history.size() - 1).content());
    assertEquals("p1", last.by());
    assertEquals(
        "moved a bone of; bone: \"humerus left\" -> \"femur left\""
            + "; why: sides were taken for each other",
        last.words());
  }

  @Test
  void theNumberOfAMovedBoneIsNotGivenToTheNextOneAtItsOldPlace() {
    measured();
    move(LEFT_HUMERUS, LEFT_FEMUR);
    assertEquals(
        new BoneId("A-1 humerus left 2"), collection.skeletons().number(ANIMAL, LEFT_HUMERUS));
  }

  @Test
  void twoBonesChangePlacesWhenBothStandThere() {
    move(LEFT_HUMERUS, RIGHT_HUMERUS);
    AnimalCard now = card();
    ShelfBone left =
        new ShelfBone(
            LEFT_HUMERUS.element(), Side.LEFT, Portion.WHOLE, Set.of(), Map.of(code("GL"), 140.0));
    collection
        .register()
        .change(
            now,
            now.withAnimal(now.animal().withBones(List.of(now.animal().bones().get(0), left))),
            NOTE);
    move(LEFT_HUMERUS, RIGHT_HUMERUS);
    assertEquals(
        List.of(150.0, 140.0),
        card().animal().bones().stream().map(b -> b.values().get(code("GL"))).toList());
    assertEquals(
        List.of(Side.LEFT, Side.RIGHT),
        card().animal().bones().stream().map(ShelfBone::side).toList());
  }

  @Test
  void aPlaceWithoutABoneAnUnknownElementAndAWrongSideAreRefused() {
    String before = collection.contentHash();
    assertEquals("A-1 has no femur left. Nothing was moved.", reason(LEFT_FEMUR, RIGHT_HUMERUS));
    assertEquals(
        "\"wing\" is no element of the protocol. Nothing was moved.",
        reason(LEFT_HUMERUS, place("wing", Side.LEFT)));
    assertEquals(
        "The humerus has no side \"axial\". Nothing was moved.",
        reason(LEFT_HUMERUS, place("humerus", Side.AXIAL)));
    assertEquals(
        "The bone stands as humerus left already. Nothing was moved.",
        reason(LEFT_HUMERUS, LEFT_HUMERUS));
    assertEquals(before, collection.contentHash());
  }

  private String reason(BonePlace from, BonePlace to) {
    return move(from, to).fold(done -> "moved", none -> none.reason());
  }

  @Test
  void whatWasSaidOfABoneComesBackAndAnUnfusedEndFlagsItsCard() {
    measured();
    SkeletonBone bone = collection.skeletons().bone(NUMBER).orElseThrow();
    assertEquals(Fusion.UNFUSED, bone.held().state().distal());
    assertEquals(Set.of(Flag.GNAWED, Flag.UNFUSED), bone.cardFlags());
    assertEquals(List.of(bone), collection.skeletons().of(ANIMAL));
  }
}
