package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.capture.Question;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Reading;
import org.comparanda.tray.TrayBone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Everything beside readings that the number pad does: numbers by rule, batches, sides, pieces,
 * bones found together, another element. Keys are written as they are typed, Enter as \n.
 */
class KeyingTest {
  @TempDir private Path folder;
  private BareBench room;
  private BenchViewModel bench;

  @BeforeEach
  void open() {
    room = BareBench.in(folder);
    bench = new BenchViewModel(room.place());
    bench.choose(BareBench.TRAY);
    keys("\n"); // the state of N-1: all fine
  }

  @AfterEach
  void close() {
    room.close();
  }

  private void keys(String characters) {
    for (int i = 0; i < characters.length(); i++) {
      char c = characters.charAt(i);
      if (bench.state().questionsProperty().get().isPresent()) {
        bench.state().typed(c);
      } else if (c == '\n') {
        bench.readings().pressed(NamedKey.ENTER);
      } else {
        bench.readings().typed(c);
      }
    }
  }

  private void restart() {
    room.close();
    room = BareBench.in(folder);
    bench = new BenchViewModel(room.place());
  }

  private TrayBone inHand() {
    return bench.boneProperty().get().orElseThrow();
  }

  private String number() {
    return inHand().id().value();
  }

  private Question question() {
    return bench.errands().questionProperty().get().orElseThrow();
  }

  private List<String> taken(String bone) {
    return room.collection().readings().of(new BoneId(bone)).stream()
        .map(Reading::asTyped)
        .toList();
  }

  @Test
  void twoPointsOnTheFirstFieldLeaveNothingForTheNextKeys() {
    keys("..");
    assertEquals("", bench.readings().fieldProperty().get().text());
    keys("01\n");
    assertTrue(bench.errands().questionProperty().get().isPresent(), "01 is no reading of .01");
    assertEquals(List.of(), taken(number()));
  }

  @Test
  void keysThatAskForSomethingAreNoHalfTypedReadingAfterARestart() {
    keys("15.8\n");
    keys("00\n");
    restart();
    assertEquals("", bench.readings().fieldProperty().get().text());
  }

  @Test
  void theNextNumberIsShownBeforeItIsUsedAndNoneIsUsedUpByLeaving() {
    keys("01\n");
    assertTrue(question().explained().contains("H-2026-0001"), question().explained());
    keys("-");
    assertTrue(bench.errands().questionProperty().get().isEmpty());
    assertEquals(3, bench.bones().size());
    keys("01\n\n");
    assertEquals("H-2026-0001", number());
  }

  @Test
  void aBatchGivesTheSameElementSideAndPortionToTheNextBonesAndEnds() {
    keys("01\n3\n");
    List<String> numbers = new ArrayList<>(List.of(number()));
    assertEquals(Side.LEFT, inHand().side());
    assertEquals(Portion.DISTAL, inHand().portion());
    assertEquals(BoneState.notRecorded(), inHand().state());
    keys("\n01\n"); // state, then the next one without a question
    numbers.add(number());
    assertTrue(bench.errands().standingProperty().get().contains("1 to come"));
    keys("\n01\n");
    numbers.add(number());
    assertEquals(List.of("H-2026-0001", "H-2026-0002", "H-2026-0003"), numbers);
    keys("\n01\n");
    assertTrue(bench.errands().questionProperty().get().isPresent(), "the batch is over");
  }

  @Test
  void aBatchGoesOnAfterARestart() {
    keys("01\n5\n\n15.8\n");
    restart();
    assertEquals("H-2026-0001", number());
    keys("01\n");
    assertEquals("H-2026-0002", number());
    assertTrue(bench.errands().standingProperty().get().contains("3 to come"));
  }

  @Test
  void aCountThatCantBeLeavesTheQuestionOpen() {
    keys("01\n501\n");
    assertTrue(bench.errands().refusalProperty().get().startsWith("\"501\""));
    assertTrue(bench.errands().questionProperty().get().isPresent());
    keys("2\n");
    assertEquals("H-2026-0001", number());
  }

  @Test
  void anEmptyTrayGetsItsFirstBoneByElementSideAndPortion() {
    bench.choose(BareBench.EMPTY);
    bench.errands().firstBone();
    keys("1\n");
    keys("2\n");
    assertEquals(0, bench.bones().size());
    keys("4\n");
    assertEquals("B-2026-0001", number());
    assertEquals(bench.state().elements().get(0).key(), inHand().element());
    assertEquals(Side.RIGHT, inHand().side());
    assertEquals(Portion.DISTAL, inHand().portion());
  }

  @Test
  void bothSidesOfOneAnimalAreKeyedMeasurementByMeasurement() {
    keys("02\n2\n"); // beside the bone that lies second in the tray
    assertEquals("N-1", number());
    keys("15.8\n");
    assertEquals("N-2", number());
    keys("\n15.9\n"); // its state first
    assertEquals("N-1", number());
    keys("32.7\n");
    keys("32.6\n");
    assertEquals(List.of("15.8", "32.7"), taken("N-1"));
    assertEquals(List.of("15.9", "32.6"), taken("N-2"));
    assertEquals(
        List.of(new BoneId("N-1"), new BoneId("N-2")),
        room.collection().associations().of(new BoneId("N-1")).orElseThrow().bones());
  }

  @Test
  void theOtherSidesValueIsShownAndOneFarOffIsWarnedOf() {
    keys("02\n2\n15.8\n\n");
    assertEquals("N-2", number());
    assertEquals("Other side (left): 15.8 mm", bench.readings().besideProperty().get());
    keys("19.8");
    assertTrue(
        bench.readings().warningsProperty().get().stream()
            .anyMatch(w -> w.sentence().startsWith("The left side has 15.8 mm")),
        bench.readings().warningsProperty().get().toString());
    keys("\n32.7\n");
    assertEquals("N-2", number());
    assertEquals("Other side (left): 32.7 mm", bench.readings().besideProperty().get());
  }

  @Test
  void theKeysAreShownInTheWindow() {
    keys("09\n");
    assertTrue(bench.errands().keysShownProperty().get());
    assertTrue(bench.errands().keyPage().endsWith("keys.pdf"), bench.errands().keyPage());
  }

  @Test
  void undoTakesBackTheNewestReadingOfThePairWhicheverBoneItIsOf() {
    keys("02\n2\n15.8\n\n15.9\n");
    assertEquals("N-1", number());
    keys("/");
    assertEquals("N-2", number());
    assertEquals(java.util.Map.of(), bench.readings().values());
    keys("/");
    assertEquals(
        List.of(Reading.Kind.TAKE, Reading.Kind.WITHDRAWAL),
        room.collection().readings().of(new BoneId("N-1")).stream().map(Reading::kind).toList());
  }

  @Test
  void aPairGoesOnAfterARestartAndEndsByTheSameKey() {
    keys("02\n2\n15.8\n\n");
    restart();
    assertEquals("N-2", number());
    keys("15.9\n");
    assertEquals("N-1", number());
    keys("02\n32.7\n");
    assertEquals("N-1", number());
  }

  @Test
  void theOtherSideMayBeANewBoneAndMustBeTheSameElement() {
    keys("02\n3\n");
    assertTrue(bench.errands().refusalProperty().get().startsWith("\"3\" is not the place"));
    keys("\n");
    TrayBone other = room.collection().trays().bone(new BoneId("H-2026-0001")).orElseThrow();
    assertEquals(Side.RIGHT, other.side());
    assertEquals(inHand().element(), other.element());
  }

  @Test
  void aBoneWithoutSideHasNoOtherSide() {
    bench.step(2);
    keys("\n02\n");
    assertTrue(bench.errands().questionProperty().get().isEmpty());
    assertEquals(
        "Only a left or a right bone has another side. Set its side first.",
        bench.readings().messageProperty().get());
  }

  @Test
  void piecesMakeOneBoneAndWhatCrossesTheBreakIsMarkedInTheLog() {
    keys("04\n13\n");
    assertEquals(Portion.WHOLE, inHand().portion());
    assertEquals(
        Portion.WHOLE, room.collection().trays().bone(inHand().id()).orElseThrow().portion());
    assertTrue(bench.errands().standingProperty().get().contains("across a break: GL, GLC"));
    keys("151.2\n");
    Reading length = room.collection().readings().of(new BoneId("N-1")).get(0);
    assertEquals("GL", length.code().value());
    assertEquals("across a break. ", length.reason());
  }

  @Test
  void aPersonMarksAMeasurementThatCrossesABreak() {
    keys("04\n32\n");
    assertEquals("SD", bench.readings().currentProperty().get().orElseThrow().code().value());
    keys("05\n15.8\n");
    assertEquals(
        "across a break. ", room.collection().readings().of(new BoneId("N-1")).get(0).reason());
    restart();
    assertTrue(bench.errands().standingProperty().get().contains("across a break: SD"));
  }

  @Test
  void piecesOfTwoBonesAreRefusedAndNothingIsStored() {
    keys("04\n33\n");
    assertTrue(bench.errands().refusalProperty().get().startsWith("These pieces can't be one"));
    keys("-");
    assertEquals(Optional.empty(), room.collection().refits().of(new BoneId("N-1")));
    assertEquals(Portion.DISTAL, inHand().portion());
  }

  @Test
  void bonesFoundTogetherAreSaidByTheirPlaceAndTakenOutByZero() {
    keys("06\n3\n");
    assertTrue(bench.errands().standingProperty().get().contains("Found together with N-3."));
    restart();
    bench.choose(BareBench.TRAY);
    assertTrue(bench.errands().standingProperty().get().contains("Found together with N-3."));
    keys("06\n0\n");
    assertFalse(bench.errands().standingProperty().get().contains("N-3"));
  }

  @Test
  void anotherElementKeepsTheReadingsAndTheyComeBackWithIt() {
    keys("15.8\n32.7\n");
    int femur =
        bench.state().elements().stream().map(e -> e.key().value()).toList().indexOf("femur") + 1;
    int humerus =
        bench.state().elements().stream().map(e -> e.key().value()).toList().indexOf("humerus") + 1;
    keys("03\n" + femur + "\n");
    assertEquals("femur", inHand().element().value());
    assertEquals(java.util.Map.of(), bench.readings().values());
    assertTrue(bench.readings().messageProperty().get().contains("2 measured before stay"));
    keys("03\n" + humerus + "\n");
    assertEquals(2, bench.readings().values().size());
  }

  @Test
  void whatOneKeyRecordsIsSaidAndTheUndoKeyTakesItBack() {
    assertTrue(
        bench.readings().messageProperty().get().startsWith("Recorded: "),
        bench.readings().messageProperty().get());
    assertEquals(Fusion.FUSED, inHand().state().distal());
    keys("/");
    assertEquals(
        BoneState.notRecorded(),
        room.collection().trays().bone(new BoneId("N-1")).orElseThrow().state());
    assertTrue(bench.state().questionsProperty().get().isPresent());
  }

  @Test
  void stopGoesThroughAnOpenQuestion() {
    keys("01\n");
    bench.askStop();
    keys("\n");
    assertTrue(bench.stopped());
    assertTrue(bench.errands().questionProperty().get().isEmpty());
  }
}
