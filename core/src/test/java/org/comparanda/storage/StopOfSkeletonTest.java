package org.comparanda.storage;

import static org.comparanda.register.Invented.code;
import static org.comparanda.register.Invented.sheep;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.HeldBone;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.capture.Draft;
import org.comparanda.capture.Place;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.daybook.Verdict;
import org.comparanda.dossier.HeldAnimals;
import org.comparanda.house.Grant;
import org.comparanda.house.Right;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.ChangeNote;
import org.comparanda.register.SkeletonBone;
import org.comparanda.register.Standing;
import org.comparanda.statistics.NotEstimable;
import org.comparanda.tray.Stop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two bones of skeleton A-1 are measured on the Shelf and may be human; A-2 stands beside it. */
class StopOfSkeletonTest {
  private static final Instant NOW = Instant.parse("2026-11-25T10:15:30Z");
  private static final PersonId ANN = new PersonId("ann");
  private static final ChangeNote NOTE = new ChangeNote(ANN, "weighed anew");
  private static final AnimalId ANIMAL = new AnimalId("A-1");
  private static final BoneId LEFT = new BoneId("A-1 humerus left");
  private static final BoneId RIGHT = new BoneId("A-1 humerus right");

  @TempDir Path folder;
  private Collection room;

  @BeforeEach
  void twoBonesAreMeasured() {
    room = Collection.create(folder.resolve("c.comparanda"), Clock.fixed(NOW, ZoneOffset.UTC));
    room.animals()
        .add(
            List.of(
                sheep("A-1", Side.LEFT, Map.of(code("GL"), 150.0)).animal(),
                sheep("A-2", Side.LEFT, Map.of(code("GL"), 151.0)).animal()));
    measured(LEFT, Side.LEFT);
    measured(RIGHT, Side.RIGHT);
  }

  @AfterEach
  void close() {
    room.close();
  }

  private void measured(BoneId number, Side side) {
    HeldBone held =
        new HeldBone(new ElementKey("humerus"), side, Portion.WHOLE, BoneState.notRecorded());
    room.skeletons().save(new SkeletonBone(number, ANIMAL, held), ANN);
  }

  private void stop(BoneId bone) {
    assertTrue(room.stops().setAside(bone, ANN, NOW, "").value().isPresent());
  }

  private void annMayOpen() {
    room.people().save(new Person(ANN, "Invented Ann"));
    for (Right right : List.of(Right.KEEPER, Right.OPEN_STOP)) {
      Grant grant = new Grant(0, ANN, right, Grant.Kind.GIVEN, ANN, NOW, "");
      assertTrue(room.grants().append(grant).value().isPresent());
    }
  }

  private AnimalCard card() {
    return room.register().card(ANIMAL).orElseThrow();
  }

  private List<String> onTheShelf() {
    return room.animals().shelf().animals().stream().map(a -> a.id().value()).toList();
  }

  @Test
  void withABoneItsAnimalLeavesEveryFitAndTheShelfHasANewVersion() {
    long before = room.shelfVersion();
    stop(LEFT);
    assertEquals(List.of("A-2"), onTheShelf());
    assertEquals(new Standing.SetAside(Standing.kept()), card().standing());
    assertEquals(before + 1, room.shelfVersion());
    assertEquals(
        List.of(Stop.Kind.SET_ASIDE), room.stops().of(LEFT).stream().map(Stop::kind).toList());
    assertInstanceOf(Verdict.Sound.class, room.verifyDayBook());
  }

  @Test
  void theDayBookSaysItOnTheAnimalsCard() {
    stop(LEFT);
    List<DayBookEntry> history = room.register().history(ANIMAL);
    assertTrue(
        history.get(history.size() - 1).content().contains("why: A-1 humerus left: may be human"),
        history.get(history.size() - 1).content());
  }

  @Test
  void whatLiesHalfTypedIsWiped() {
    room.drafts()
        .save("shelf 1", new Draft(LEFT, new ElementKey("humerus"), new Place(code("GL"), 1), "1"));
    stop(LEFT);
    assertEquals(Optional.empty(), room.drafts().of("shelf 1"));
  }

  @Test
  void nothingOfItIsStoredMovedMergedOrPutBackUntilItIsOpened() {
    AnimalCard seen = card();
    stop(LEFT);
    AnimalCard now = card();
    Animal lighter = now.animal().withBones(List.of(seen.animal().bones().get(0)));
    AnimalCard more =
        now.withAnimal(
            lighter.withBones(
                List.of(
                    sheep("A-1", Side.LEFT, Map.of(code("GL"), 160.0)).animal().bones().get(0))));
    String closed = "A-1 is set aside: a bone of it may be human. Nothing was stored.";
    assertEquals(closed, refusal(room.register().change(now, more, NOTE)));
    assertEquals(closed, refusal(room.register().retire(ANIMAL, NOTE)));
    assertEquals(closed, refusal(room.register().bringBack(ANIMAL, NOTE)));
    assertEquals(
        "A-1 is set aside as possibly human. Nothing was merged.",
        refusal(room.register().merge(new AnimalId("A-2"), ANIMAL, NOTE)));
  }

  @Test
  void whereItLiesMayStillBeSaid() {
    stop(LEFT);
    AnimalCard moved =
        card().withAnimal(card().animal().withDrawer(Optional.of("covered, in room 2")));
    assertEquals(1, room.register().change(card(), moved, NOTE).value().orElseThrow().size());
    assertEquals(List.of("A-2"), onTheShelf());
  }

  @Test
  void itStaysInTheHouse() {
    stop(LEFT);
    HeldAnimals held = HeldAnimals.of(room.register().all(), HeldAnimals.Restricted.OPENED);
    assertEquals(1, held.open().size());
    assertEquals("held back: 1 set aside as possibly human", held.sentence());
  }

  @Test
  void aPersonWithTheRightOpensEachBoneAndTheLastOnePutsTheAnimalBack() {
    stop(LEFT);
    stop(RIGHT);
    assertInstanceOf(NotEstimable.class, room.stops().openAgain(LEFT, ANN, NOW, "looked at"));
    annMayOpen();
    assertTrue(room.stops().openAgain(LEFT, ANN, NOW, "a bear, by X").value().isPresent());
    assertEquals(List.of("A-2"), onTheShelf());
    assertTrue(room.stops().openAgain(RIGHT, ANN, NOW, "a bear, by X").value().isPresent());
    assertEquals(List.of("A-1", "A-2"), onTheShelf());
    assertInstanceOf(NotEstimable.class, room.stops().openAgain(RIGHT, ANN, NOW, "twice"));
    assertInstanceOf(Verdict.Sound.class, room.verifyDayBook());
  }

  @Test
  void anAnimalOffTheShelfStaysOffItWhenItsBoneIsOpened() {
    annMayOpen();
    room.register().retire(ANIMAL, NOTE);
    stop(LEFT);
    assertEquals(new Standing.SetAside(new Standing.Retired()), card().standing());
    assertTrue(room.stops().openAgain(LEFT, ANN, NOW, "a bear, by X").value().isPresent());
    assertEquals(new Standing.Retired(), card().standing());
  }

  @Test
  void theSearchOpensItsAnimal() {
    assertTrue(room.stops().setAside(LEFT, ANN, NOW, "slender shaft").value().isPresent());
    assertEquals(
        List.of("ANIMAL A-1"),
        room.search(asked -> List.of()).find("slender humerus", 60).stream()
            .map(hit -> hit.opens() + " " + hit.key())
            .distinct()
            .toList());
  }

  @Test
  void aBoneThatNobodyMeasuredCannotBeSetAside() {
    assertEquals(
        "There is no bone \"A-1 femur left\" on a tray or measured of a skeleton. Nothing was"
            + " changed.",
        refusal(room.stops().setAside(new BoneId("A-1 femur left"), ANN, NOW, "")));
  }

  private static String refusal(org.comparanda.statistics.Outcome<?> outcome) {
    return outcome.fold(done -> "stored", NotEstimable::reason);
  }
}
