package org.comparanda.gui.shelf.skeleton;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.capture.warning.Warning;
import org.comparanda.gui.shelf.keeping.KeepersRoom;
import org.comparanda.gui.shelf.keeping.MoveViewModel;
import org.comparanda.gui.shelf.skeleton.SkeletonViewModel.Hands;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Reading;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.ShelfBone;
import org.comparanda.register.BonePlace;
import org.comparanda.tray.Stop;
import org.junit.jupiter.api.Test;

/**
 * The calcaneus of T-1 (GL and GB) is measured with the keys of the Bench, Enter as \n. The first
 * Enter at each bone records its state: one growing end, fused, nothing happened.
 */
class SkeletonViewModelTest extends MeasuredSkeleton {
  @Test
  void eachMeasurementIsTakenOnTheLeftThenOnTheRightAndTheFirstPassIsHidden() {
    calcaneus();
    keys("\n54.8\n");
    assertEquals(Side.RIGHT, skeleton.inHand().sideProperty().get());
    keys("\n54.6\n");
    assertEquals("54.8", row(0).first().first());
    assertEquals("54.6", row(0).second().orElseThrow().first());
    keys("19.2\n19.3\n");
    assertEquals(Side.LEFT, skeleton.inHand().sideProperty().get());
    assertEquals("hidden", row(0).first().first());
    assertTrue(message().startsWith("Pass 2: put the bone down"), message());
    assertEquals(List.of("54.8", "19.2"), taken(LEFT));
    assertEquals(List.of("54.6", "19.3"), taken(RIGHT));
  }

  @Test
  void theOtherSidesValueIsShownAndASideFarOffIsWarnedOfWhileItIsTyped() {
    calcaneus();
    keys("\n54.8\n\n64.6");
    assertEquals("Other side (left): 54.8 mm", skeleton.inHand().readings().besideProperty().get());
    assertTrue(
        skeleton.inHand().readings().warningsProperty().get().stream()
            .map(Warning::sentence)
            .anyMatch(s -> s.startsWith("The left side has 54.8 mm")),
        skeleton.inHand().readings().warningsProperty().get().toString());
  }

  @Test
  void sidesAreComparedWhenBothAreDone() {
    calcaneus();
    keys("\n54.8\n\n54.6\n19.2\n21.5\n54.8\n54.6\n19.2\n21.5\n");
    assertEquals(SkeletonRow.Standing.AGREE, row(0).standing());
    assertEquals(SkeletonRow.Standing.DIFFER, row(1).standing());
    assertEquals("10.7 %", row(1).difference()); // (21.5 − 19.2) / 21.5
    assertTrue(message().startsWith("All passes of this bone are done. +"), message());
  }

  @Test
  void aSideOnTheCardIsComparedWithTheOneThatIsMeasured() {
    skeleton.choose(KeepersRoom.TABLES.protocol().element(new ElementKey("humerus")).orElseThrow());
    skeleton.choose(Hands.LEFT);
    keys("\n"); // the card: left 150, right 165
    assertEquals("", row(0).first().kept(), "the bone in hand hides what its card has");
    assertEquals("card: 165", row(0).second().orElseThrow().kept());
    keys("150\n-1-1-1-1-1150\n");
    assertEquals("9.1 %", row(0).difference()); // 15 / 165
    assertEquals(SkeletonRow.Standing.DIFFER, row(0).standing());
  }

  @Test
  void aThirdTakeFollowsWhereTwoDisagreeAndTheMedianCounts() {
    calcaneus();
    skeleton.choose(Hands.LEFT);
    keys("\n54.8\n19.2\n60.0\n19.2\n");
    assertEquals(
        "GL", skeleton.inHand().readings().currentProperty().get().orElseThrow().code().value());
    keys("55\n");
    assertEquals(55.0, skeleton.inHand().readings().values().get(new MeasurementCode("GL")));
  }

  @Test
  void aCaliperSendsItsBurstsAndNotPossibleHasItsReason() {
    calcaneus();
    skeleton.choose(Hands.LEFT);
    keys("\n");
    skeleton.inHand().readings().burst("54.8 mm\r\n");
    keys("-1");
    assertEquals("broken", row(1).first().kept());
    assertEquals(List.of("54.8 mm", ""), taken(LEFT));
  }

  @Test
  void oneKeyTakesWhatAWarningProposesAndBothAreKept() {
    skeleton.choose(KeepersRoom.TABLES.protocol().element(new ElementKey("humerus")).orElseThrow());
    skeleton.choose(Hands.LEFT);
    keys("\n15.1"); // the shelf beside T-1: GL of T-2 is 151
    assertEquals(151.0, proposal(), 1e-12); // 15.1 times ten, one rounding
    keys("+");
    Reading row = collection.readings().of(new BoneId("T-1 humerus left")).get(0);
    assertEquals("15.1", row.asTyped());
    assertEquals(151.0, row.length().orElseThrow().mm(), 1e-12);
  }

  private double proposal() {
    return skeleton.inHand().readings().warningsProperty().get().stream()
        .flatMap(w -> w.proposal().stream())
        .findFirst()
        .orElseThrow()
        .mm();
  }

  @Test
  void undoTakesBackTheNewestReadingWhicheverSideItIsOf() {
    calcaneus();
    keys("\n54.8\n\n54.6\n/");
    assertEquals(Side.RIGHT, skeleton.inHand().sideProperty().get());
    assertEquals(
        List.of(Reading.Kind.TAKE, Reading.Kind.WITHDRAWAL),
        collection.readings().of(RIGHT).stream().map(Reading::kind).toList());
  }

  @Test
  void valuesLandOnTheCardByOneKeyWithTheStateAndTheReadingsStayInTheLog() {
    calcaneus();
    skeleton.choose(Hands.LEFT);
    keys("15\n54.8\n19.2\n54.6\n19.2\n+"); // 1: the end is unfused; 5: juvenile
    assertEquals("4 changes are on the card.", skeleton.sentenceProperty().get());
    ShelfBone bone =
        collection.animals().shelf().animal(new AnimalId("T-1")).orElseThrow().bones().get(2);
    assertEquals(CALCANEUS, bone.element());
    assertEquals(Set.of(Flag.UNFUSED, Flag.JUVENILE), bone.flags());
    assertEquals(
        Map.of(new MeasurementCode("GL"), 54.7, new MeasurementCode("GB"), 19.2), bone.values());
    assertEquals(4, collection.readings().of(LEFT).size());
  }

  @Test
  void anUnfinishedBoneIsNotPutOnTheCard() {
    calcaneus();
    keys("\n54.8\n\n");
    keys("+");
    assertEquals(
        "A bone has open fields: measure them or say that they are not possible. Nothing was put"
            + " on the card.",
        skeleton.sentenceProperty().get());
  }

  @Test
  void aBrokenBoneIsMeasuredAsThePartThatIsThere() {
    skeleton.choose(KeepersRoom.TABLES.protocol().element(new ElementKey("femur")).orElseThrow());
    skeleton.choose(Hands.LEFT);
    skeleton.inHand().state().portionProperty().set(Portion.DISTAL);
    keys("\n");
    assertEquals("gone with the missing part", row(0).first().kept());
    assertEquals(
        Portion.DISTAL, collection.skeletons().of(new AnimalId("T-1")).get(0).held().portion());
  }

  @Test
  void halfTypedTextComesBackAfterARestart() {
    calcaneus();
    keys("\n54.8\n\n54.");
    start();
    assertEquals(Optional.of(new AnimalId("T-1")), skeleton.unfinished());
    assertEquals(CALCANEUS, skeleton.elementProperty().get().orElseThrow().key());
    assertEquals(Side.RIGHT, skeleton.inHand().sideProperty().get());
    assertEquals("54.", skeleton.inHand().readings().fieldProperty().get().text());
  }

  @Test
  void anotherNameLeavesWhatIsTyped() {
    calcaneus();
    keys("\n54.8\n\n54.");
    signature.whoProperty().set("p12");
    assertEquals("54.", skeleton.inHand().readings().fieldProperty().get().text());
    keys("6\n");
    assertEquals("p12", collection.readings().of(RIGHT).get(0).person().value());
  }

  @Test
  void nothingIsMeasuredWithoutAName() {
    signature.whoProperty().set("");
    calcaneus();
    assertEquals("Say who measures first.", message());
    keys("54.8\n");
    assertEquals(List.of(), taken(LEFT));
  }

  @Test
  void aBoneMeasuredAsTheWrongSideIsMovedWithItsReadings() {
    calcaneus();
    skeleton.choose(Hands.LEFT);
    keys("\n54.8\n");
    MoveViewModel moves =
        new MoveViewModel(
            KeepersRoom.of(collection), signature, Runnable::run, Runnable::run, skeleton::moved);
    moves.show(Optional.of(new BonePlace(CALCANEUS, Side.LEFT, Portion.WHOLE)));
    moves.sideProperty().set(Side.RIGHT);
    moves.move(skeleton.cardProperty().get().orElseThrow());
    assertEquals("Say who changes it and why; nothing was stored.", moves.sentenceProperty().get());
    signature.whyProperty().set("sides taken for each other");
    moves.move(skeleton.cardProperty().get().orElseThrow());
    assertEquals(
        "Moved: calcaneus, heel bone, left is now calcaneus, heel bone, right.",
        moves.sentenceProperty().get().toLowerCase(Locale.ROOT).replace("moved", "Moved"));
    skeleton.choose(Hands.RIGHT);
    assertEquals("54.8", row(0).second().orElseThrow().first());
    assertEquals(List.of("54.8"), taken(LEFT)); // the number stays with the bone
  }

  @Test
  void stopSetsTheBoneAsideAndClosesItsWholeSkeleton() {
    calcaneus();
    skeleton.choose(Hands.LEFT);
    keys("\n54.8\n19.2\n54.6\n19.2\n");
    stop();
    assertTrue(skeleton.stopped());
    assertEquals(
        List.of(Stop.Kind.SET_ASIDE),
        collection.stops().of(LEFT).stream().map(Stop::kind).toList());
    assertEquals(
        Optional.empty(), collection.animals().shelf().animal(new AnimalId("T-1")), "in no fit");
    keys("19.2\n");
    assertEquals(List.of("54.8", "19.2", "54.6", "19.2"), taken(LEFT));
    skeleton.store();
    assertEquals(
        "T-1 is set aside: a bone of it may be human. Nothing was stored. A named person with the"
            + " right open_stop opens that bone again first, with a reason.",
        skeleton.sentenceProperty().get());
  }

  @Test
  void aSkeletonThatWasSetAsideOpensClosed() {
    calcaneus();
    keys("\n");
    stop();
    start();
    assertTrue(skeleton.stopped());
    skeleton.choose(KeepersRoom.TABLES.protocol().element(new ElementKey("humerus")).orElseThrow());
    keys("151\n");
    assertEquals(List.of(), taken(new BoneId("T-1 humerus left")));
  }

  @Test
  void stopWaitsForNoName() {
    signature.whoProperty().set("");
    calcaneus();
    stop();
    assertEquals("not named", collection.stops().of(LEFT).get(0).person().value());
  }

  @Test
  void pagesGoToTheNextElementOfTheProtocolAndItsEndsStay() {
    skeleton.choose(skeleton.elements().get(0));
    skeleton.step(-1);
    assertEquals(skeleton.elements().get(0), skeleton.elementProperty().get().orElseThrow());
    skeleton.step(1);
    assertEquals(skeleton.elements().get(1), skeleton.elementProperty().get().orElseThrow());
  }
}
