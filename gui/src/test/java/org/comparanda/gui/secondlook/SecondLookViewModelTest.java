package org.comparanda.gui.secondlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.collections.ObservableList;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.secondlook.AgreementShown.PairLine;
import org.comparanda.gui.secondlook.AgreementShown.WhyLine;
import org.comparanda.measurement.BoneId;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallHistory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Second Look without a window, on a real file. */
class SecondLookViewModelTest {
  @TempDir Path folder;
  private LookRoom room;
  private SecondLookViewModel model;

  @BeforeEach
  void benSitsHere() {
    room = new LookRoom(folder);
    model = room.model(Optional.of(LookRoom.BEN));
  }

  @AfterEach
  void close() {
    room.collection.close();
  }

  private static List<String> bones(ObservableList<QueueLine> lines) {
    return lines.stream().map(line -> line.bone().value()).toList();
  }

  private void look(String bone, String name) {
    model.open(new BoneId(bone));
    model.taking().form().nameProperty().set(name);
    model.taking().record(Optional.empty(), Optional.empty(), Optional.empty());
  }

  private Opened.Both both() {
    return assertInstanceOf(Opened.Both.class, model.openProperty().get().orElseThrow());
  }

  private CallHistory history(String bone) {
    return new CallHistory(room.collection.trays().callsOn(new BoneId(bone)));
  }

  // By hand: positions 2, 4, 6, 8, 10 are drawn; the others were called against red deer.
  @Test
  void drawnBonesStandApartFromThosePickedForAReason() {
    assertEquals(List.of("L-1", "L-3", "L-5", "L-7", "L-9"), bones(model.drawn()));
    assertEquals(List.of("L-0", "L-2", "L-4", "L-6", "L-8"), bones(model.picked()));
    assertEquals("called against the suggestion", model.picked().get(0).says());
    assertEquals(List.of(), model.looked());
    assertEquals("Pit 4", model.drawn().get(0).tray());
  }

  @Test
  void nothingWaitsForThePersonWhoCalledThem() {
    model.sit(LookRoom.ANN);
    assertEquals(List.of(), model.drawn());
    assertEquals(List.of(), model.picked());
  }

  @Test
  void nobodySeesAnythingBeforeSayingWhoSitsHere() {
    SecondLookViewModel nobody = room.model(Optional.empty());
    assertEquals(Optional.empty(), nobody.personProperty().get());
    assertEquals(List.of(), nobody.drawn());
    assertEquals(3, nobody.people().size());
  }

  @Test
  void boneOpensBlindAndBothCallsStandSideBySideOnceTheLookIsRecorded() {
    model.open(new BoneId("L-1"));
    assertEquals(
        Optional.of(new Opened.Blind(new BoneId("L-1"), "Pit 4")), model.openProperty().get());
    model.taking().form().nameProperty().set("Capra cf. hircus");
    model
        .taking()
        .record(
            Optional.of(new ElementKey("tibia")),
            Optional.of(Side.RIGHT),
            Optional.of(Portion.SHAFT));
    Opened.Both both = both();
    assertEquals("The calls differ. Both lie in Caprini.", both.sentence());
    assertEquals(
        List.of("Ovis aries", "Capra cf. hircus"),
        both.columns().stream().map(Opened.Said::name).toList());
    assertEquals(
        List.of("left radius, lower end", "right tibia, shaft"),
        both.columns().stream().map(Opened.Said::element).toList());
    assertEquals(
        "Cervus elaphus; suggestion seen before the call", both.columns().get(0).numbers());
    assertEquals("every-nth draw", both.why());
    Call look = history("L-1").secondLooks().get(0);
    assertFalse(look.sawSuggestion());
    assertEquals(LookRoom.BEN.id(), look.person());
    assertEquals("Ovis aries", history("L-1").holding().orElseThrow().written());
    assertEquals(List.of("L-1"), bones(model.looked()));
    assertEquals("differ", model.looked().get(0).says());
  }

  @Test
  void whoKnowsTheCallCannotLookBlind() {
    model.open(new BoneId("L-1"));
    model.taking().form().nameProperty().set("Ovis aries");
    model.taking().sawBeforeProperty().set(true);
    model.taking().record(Optional.empty(), Optional.empty(), Optional.empty());
    assertTrue(model.messageProperty().get().endsWith("let another person look."));
    assertEquals(List.of(), history("L-1").secondLooks());
  }

  @Test
  void elementIsSaidWholeOrNotAtAll() {
    model.open(new BoneId("L-1"));
    model.taking().form().nameProperty().set("Ovis aries");
    model.taking().record(Optional.of(new ElementKey("tibia")), Optional.empty(), Optional.empty());
    assertEquals(List.of(), history("L-1").secondLooks());
    look("L-1", " ");
    assertEquals(List.of(), history("L-1").secondLooks());
  }

  @Test
  void anotherPersonAtTheTableCoversWhatLiesOpen() {
    look("L-1", "Bovidae");
    assertEquals("The calls agree at Bovidae only.", both().sentence());
    model.sit(LookRoom.CAT);
    assertEquals(Optional.empty(), model.openProperty().get());
    assertEquals(List.of(), model.looked());
    assertTrue(bones(model.drawn()).contains("L-1"));
    model.open(new BoneId("L-1"));
    assertInstanceOf(Opened.Blind.class, model.openProperty().get().orElseThrow());
  }

  @Test
  void thirdPersonSettlesWithALineOfWhyAndTheCallHoldsFromThenOn() {
    look("L-0", "Capra hircus");
    model.sit(LookRoom.CAT);
    model.open(new BoneId("L-0"));
    assertEquals(Call.Kind.THIRD_PERSON, both().settlesAs());
    model.taking().form().nameProperty().set("Caprini indet.");
    model.taking().settle(Optional.empty(), Optional.empty(), Optional.empty());
    assertEquals(Optional.empty(), history("L-0").resolution());
    model.taking().form().whyProperty().set("the end is too worn");
    model
        .taking()
        .settle(
            Optional.of(new ElementKey("radius")),
            Optional.of(Side.RIGHT),
            Optional.of(Portion.DISTAL));
    Call settled = history("L-0").holding().orElseThrow();
    assertEquals(Call.Kind.THIRD_PERSON, settled.kind());
    assertEquals("the end is too worn", settled.grounds().why());
    assertEquals(Side.RIGHT, room.collection.trays().bone(new BoneId("L-0")).orElseThrow().side());
    assertEquals("Caprini indet.", both().settled().orElseThrow().name());
    assertEquals("settled", model.looked().get(0).says());
  }

  @Test
  void oneOfTheTwoSettlesAsAConsensus() {
    look("L-0", "Capra hircus");
    assertEquals(Call.Kind.CONSENSUS, both().settlesAs());
    model.taking().form().nameProperty().set("Capra hircus");
    model.taking().form().whyProperty().set("both looked again");
    model.taking().settle(Optional.empty(), Optional.empty(), Optional.empty());
    assertEquals(Call.Kind.CONSENSUS, history("L-0").holding().orElseThrow().kind());
  }

  @Test
  void boneThatMayBeHumanIsNowhere() {
    look("L-1", "Capra hircus");
    room.collection
        .stops()
        .setAside(new BoneId("L-1"), LookRoom.ANN.id(), LookRoom.CLOCK.instant(), "");
    room.collection
        .stops()
        .setAside(new BoneId("L-3"), LookRoom.ANN.id(), LookRoom.CLOCK.instant(), "");
    model.refresh();
    assertEquals(List.of("L-5", "L-7", "L-9"), bones(model.drawn()));
    assertEquals(List.of(), model.looked());
    assertEquals(Optional.empty(), model.openProperty().get());
    assertEquals(List.of(), model.agreement().shownProperty().get().pairs());
  }

  // By hand: of the draw L-1, L-3 (sheep) and L-5, L-7, L-9 (goat) Ben calls all goat but L-3:
  // 4 of 5 agree; chance (2·1 + 3·4)/25 = 0.56; kappa (0.8 − 0.56)/0.44 = 0.5454…
  @Test
  void kappaComesFromTheDrawAndTargetedLooksHaveATableOfTheirOwn() {
    look("L-1", "Capra hircus");
    look("L-3", "Ovis aries");
    List.of("L-5", "L-7", "L-9").forEach(bone -> look(bone, "Capra hircus"));
    look("L-0", "Dama dama");
    look("L-2", "Bovidae");
    AgreementShown shown = model.agreement().shownProperty().get();
    assertEquals(
        "5 bones of the draw were looked at again: 4 agree, 0 agree at a group only.",
        shown.sentence());
    assertEquals("0.55", shown.kappas().get(0).value());
    assertEquals("5", shown.kappas().get(0).bones());
    assertTrue(shown.kappas().get(1).missing().startsWith("Not estimable: three bones"));
    assertEquals(List.of(new PairLine("Capra hircus", "Ovis aries", 1)), shown.pairs());
    assertEquals(
        List.of(new WhyLine("called against the suggestion", 2, 0, 1, 1)), shown.targeted());
    assertEquals(
        List.of(
            new PairLine("Bovidae", "Ovis aries", 1), new PairLine("Dama dama", "Ovis aries", 1)),
        shown.targetedPairs());
    model.agreement().rankProperty().set(AgreementViewModel.Rank.FAMILY);
    model.refresh();
    assertTrue(
        model
            .agreement()
            .shownProperty()
            .get()
            .kappas()
            .get(0)
            .missing()
            .contains("one name alone"));
  }
}
