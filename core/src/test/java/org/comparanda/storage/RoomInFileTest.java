package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.capture.Draft;
import org.comparanda.capture.Place;
import org.comparanda.daybook.Verdict;
import org.comparanda.house.Grant;
import org.comparanda.house.HouseRule;
import org.comparanda.house.Right;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.secondlook.Agreement;
import org.comparanda.secondlook.LookDesk;
import org.comparanda.secondlook.Queue;
import org.comparanda.statistics.NotEstimable;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Beside;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallDesk;
import org.comparanda.tray.ElementCall;
import org.comparanda.tray.Grounds;
import org.comparanda.tray.Keeping;
import org.comparanda.tray.Lot;
import org.comparanda.tray.Priority;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.Scrap;
import org.comparanda.tray.Stop;
import org.comparanda.tray.TraitAnswer;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The room's work in the file, by its repositories. All rows are invented. */
class RoomInFileTest {
  private static final Instant NOW = Instant.parse("2026-11-25T10:15:30Z");
  private static final PersonId ANN = new PersonId("ann");
  private static final PersonId BEN = new PersonId("ben");
  private static final BoneId BONE = new BoneId("HM-1");
  private static final Beside SHEEP =
      new Beside(List.of(new TaxonName("Ovis aries")), List.of(), Optional.of(0.4));

  @TempDir Path folder;
  private Collection room = null;

  @BeforeEach
  void oneTrayWithTwoBones() {
    room = Collection.create(folder.resolve("c.comparanda"), Clock.fixed(NOW, ZoneOffset.UTC));
    room.trays().save(RepositoryContractTest.tray("T-a", Tray.State.WAITING));
    room.trays().save(RepositoryContractTest.tray("T-b", Tray.State.WAITING));
    room.trays()
        .saveAll(
            List.of(
                RepositoryContractTest.bone("HM-1", TrayBone.Standing.OPEN),
                RepositoryContractTest.bone("HM-2", TrayBone.Standing.OPEN)));
  }

  @AfterEach
  void everythingIsInTheDayBook() {
    assertInstanceOf(Verdict.Sound.class, room.verifyDayBook(room.dayBookHead()));
    room.close();
  }

  private static Call call(String bone, String taxon, PersonId person) {
    return new Call(
        0, new BoneId(bone), new TaxonName(taxon), Qualifier.NONE, person, NOW, "by eye", false);
  }

  private CallDesk calls() {
    return new CallDesk(room.trays(), ReferenceTables.shipped().taxa());
  }

  @Test
  void trayKeepsPriorityAndWhoWorksOnIt() {
    Tray wanted =
        RepositoryContractTest.tray("T-a", Tray.State.WAITING)
            .withPriority(new Priority(1, "thesis", "a researcher (invented)"))
            .withAssignedTo(Optional.of(ANN));
    room.by(BEN).trays().save(wanted);
    assertEquals(wanted, room.trays().all().get(0));
    assertThrows(IllegalArgumentException.class, () -> new Priority(1, " ", ""));
  }

  @Test
  void lotsAreThoseOfTheTraysAndHoldTheirPlacesBackUntilSaidOtherwise() {
    assertEquals(List.of(Lot.named("lot")), room.lots().all());
    Lot open = Lot.named("lot").withPlaces(Lot.Places.GO_OUT).withRemarks("published");
    room.lots().save(open);
    assertEquals(List.of(open), room.lots().all());
    assertEquals(open, room.lots().lot("lot"));
  }

  @Test
  void batchMovesAllBonesOrNone() {
    TrayBone one = room.trays().bone(BONE).orElseThrow();
    TrayBone two = room.trays().bone(new BoneId("HM-2")).orElseThrow();
    Keeping box = new Keeping("box 7", Keeping.Access.RESTRICTED);
    assertThrows(
        RuntimeException.class,
        () ->
            room.trays()
                .saveAll(
                    List.of(one.withTray(new TrayId("T-b")), two.withTray(new TrayId("nowhere")))));
    assertEquals(Optional.of(one), room.trays().bone(BONE));
    room.trays()
        .saveAll(
            List.of(
                one.withTray(new TrayId("T-b")).withKeeping(box), two.withTray(new TrayId("T-b"))));
    assertEquals(
        Optional.of(one.withTray(new TrayId("T-b")).withKeeping(box)), room.trays().bone(BONE));
    assertEquals(2, room.trays().bonesOf(new TrayId("T-b")).size());
  }

  @Test
  void trayBonesAndReadingsArePutTogetherOrNotAtAll() {
    Tray made = RepositoryContractTest.tray("T-c", Tray.State.WAITING);
    TrayBone bone = RepositoryContractTest.bone("HM-9", TrayBone.Standing.OPEN).withTray(made.id());
    assertThrows(
        RuntimeException.class,
        () ->
            room.trays().put(made, List.of(bone, bone.withTray(new TrayId("nowhere"))), List.of()));
    assertEquals(2, room.trays().all().size());
    assertEquals(Optional.empty(), room.trays().bone(new BoneId("HM-9")));
    room.trays().put(made, List.of(bone), List.of());
    assertEquals(Optional.of(bone), room.trays().bone(new BoneId("HM-9")));
  }

  @Test
  void scrapIsCountedAndWeighed() {
    Scrap some = new Scrap(0, new TrayId("T-a"), 31, Optional.of(12.5), ANN, NOW, "splinters");
    Scrap more = new Scrap(0, new TrayId("T-a"), 2, Optional.empty(), ANN, NOW, "");
    assertEquals(some.withId(1), room.scraps().append(some));
    room.scraps().append(more);
    assertEquals(List.of(some.withId(1), more.withId(2)), room.scraps().of(new TrayId("T-a")));
  }

  @Test
  void callKeepsAllThatItRestsOn() {
    Grounds grounds =
        new Grounds(
            Grounds.How.BY_BOTH,
            List.of(new AnimalId("HB-1"), new AnimalId("HB-2")),
            "the outer bump is weak",
            List.of(new TraitAnswer("sheep-goat-radius-bump", TraitAnswer.Seen.NO)),
            "cf. Capra hircus");
    Call against = call("HM-1", "Capra hircus", ANN).withGrounds(grounds);
    Call recorded = calls().record(against, SHEEP).value().orElseThrow();
    assertEquals(List.of(recorded), room.trays().callsOn(BONE));
    assertEquals(against.withId(recorded.id()), recorded);
    assertEquals(SHEEP, room.trays().beside(recorded));
  }

  @Test
  void callAgainstTheSuggestionIsRefusedWithoutALineOfWhy() {
    assertInstanceOf(NotEstimable.class, calls().record(call("HM-1", "Capra hircus", ANN), SHEEP));
    assertEquals(List.of(), room.trays().callsOn(BONE));
    assertTrue(calls().record(call("HM-1", "Ovis", ANN), SHEEP).value().isPresent());
  }

  @Test
  void callMadeBeforeTheSuggestionIsAskedNoWhyAndWhatWasSaidIsKeptBeside() {
    Call first =
        calls().recordFirst(call("HM-1", "Capra hircus", ANN), SHEEP).value().orElseThrow();
    assertEquals(List.of(first), room.trays().callsOn(BONE));
    assertEquals(SHEEP, room.trays().beside(first));
    room.stops().setAside(BONE, ANN, NOW, "");
    assertInstanceOf(
        NotEstimable.class, calls().recordFirst(call("HM-1", "Ovis aries", BEN), SHEEP));
  }

  @Test
  void anyElementIsCalledByEyeAndItsHistoryStays() {
    ElementCall atlas =
        new ElementCall(
            0, BONE, new ElementKey("atlas"), Side.AXIAL, Portion.WHOLE, ANN, NOW, "by eye");
    room.trays().record(atlas);
    TrayBone now = room.trays().bone(BONE).orElseThrow();
    assertEquals(new ElementKey("atlas"), now.element());
    assertEquals(Side.AXIAL, now.side());
    assertEquals(List.of(atlas.withId(1)), room.trays().elementCallsOn(BONE));
  }

  @Test
  void stopWipesWhatWasComputedAndOnlyANamedPersonWithTheRightOpensAgain() {
    Call recorded = calls().record(call("HM-1", "Ovis aries", ANN), SHEEP).value().orElseThrow();
    Draft half =
        new Draft(BONE, new ElementKey("humerus"), new Place(new MeasurementCode("Bd"), 1), "12,");
    room.drafts().save("bench 1", half);
    room.stops().setAside(BONE, ANN, NOW, "too thin for a deer");
    assertEquals(Beside.nothing(), room.trays().beside(recorded));
    assertEquals(Optional.empty(), room.drafts().of("bench 1"));
    assertEquals(TrayBone.Standing.STOPPED, room.trays().bone(BONE).orElseThrow().standing());
    assertInstanceOf(
        NotEstimable.class, calls().record(call("HM-1", "Ovis aries", BEN), Beside.nothing()));

    // saving the bone as open doesn't open it
    room.trays().save(RepositoryContractTest.bone("HM-1", TrayBone.Standing.OPEN));
    assertEquals(TrayBone.Standing.STOPPED, room.trays().bone(BONE).orElseThrow().standing());

    assertInstanceOf(NotEstimable.class, room.stops().openAgain(BONE, ANN, NOW, "looked at"));
    give(ANN, Right.KEEPER);
    give(ANN, Right.OPEN_STOP);
    assertInstanceOf(NotEstimable.class, room.stops().openAgain(BONE, ANN, NOW, "looked at"));
    room.people().save(new Person(ANN, "Invented Ann"));
    assertInstanceOf(NotEstimable.class, room.stops().openAgain(BONE, ANN, NOW, " "));
    assertTrue(room.stops().openAgain(BONE, ANN, NOW, "bear, by Dr Invented").value().isPresent());
    assertEquals(TrayBone.Standing.OPEN, room.trays().bone(BONE).orElseThrow().standing());
    assertEquals(
        List.of(Stop.Kind.SET_ASIDE, Stop.Kind.OPENED),
        room.stops().of(BONE).stream().map(Stop::kind).toList());
  }

  private void give(PersonId person, Right right) {
    Grant grant = new Grant(0, person, right, Grant.Kind.GIVEN, ANN, NOW, "");
    assertTrue(room.grants().append(grant).value().isPresent());
  }

  @Test
  void latestRuleHoldsAndKeepersSetIt() {
    assertEquals("10", room.houseRules().now(RuleName.SECOND_LOOK_EVERY));
    assertTrue(rule("5", BEN));
    give(ANN, Right.KEEPER);
    assertTrue(!rule("3", BEN));
    assertTrue(!rule("often", ANN));
    assertTrue(rule("4", ANN));
    assertEquals("4", room.houseRules().now(RuleName.SECOND_LOOK_EVERY));
    assertEquals(2, room.houseRules().all().size());
  }

  private boolean rule(String content, PersonId by) {
    HouseRule rule = new HouseRule(RuleName.SECOND_LOOK_EVERY, content, by, NOW, "");
    return room.houseRules().set(rule).value().isPresent();
  }

  // By hand: 4 sheep twice, 1 sheep called goat, 2 goats called sheep, 3 goats twice: 7 of 10
  // agree,
  // chance 0.5·0.6 + 0.5·0.4 = 0.5, κ = 0.2/0.5. Every bone is drawn.
  @Test
  void secondLooksAreDrawnTakenBlindAndCounted() {
    String first = "SSSSSGGGGG";
    String second = "SSSSGSSGGG";
    LookDesk desk = new LookDesk(room.trays(), room.draws(), new Queue(1, 0.05));
    room.trays()
        .saveAll(
            IntStream.range(0, 10)
                .mapToObj(i -> RepositoryContractTest.bone("L-" + i, TrayBone.Standing.OPEN))
                .toList());
    for (int i = 0; i < 10; i++) {
      room.trays().record(call("L-" + i, name(first.charAt(i)), ANN));
    }
    desk.bringUpToDate();
    assertEquals(List.of(), desk.waitingFor(ANN));
    assertEquals(10, desk.waitingFor(BEN).size());
    assertInstanceOf(NotEstimable.class, desk.lookAgain(call("L-0", "Ovis aries", ANN)));
    for (int i = 0; i < 10; i++) {
      assertTrue(desk.lookAgain(call("L-" + i, name(second.charAt(i)), BEN)).value().isPresent());
    }
    Agreement agreement = new Agreement(desk.looks(), ReferenceTables.shipped().taxa());
    assertEquals(0.4, agreement.kappa().value().orElseThrow().value(), 1e-15);

    assertInstanceOf(
        NotEstimable.class, desk.resolve(call("L-4", "Ovis aries", BEN), Call.Kind.THIRD_PERSON));
    assertInstanceOf(
        NotEstimable.class,
        desk.resolve(call("L-4", "Ovis aries", new PersonId("cat")), Call.Kind.CONSENSUS));
    assertTrue(desk.resolve(call("L-4", "Caprini", BEN), Call.Kind.CONSENSUS).value().isPresent());
    assertEquals(0.4, agreement.kappa().value().orElseThrow().value(), 1e-15);
  }

  @Test
  void elementOfASecondLookStandsBesideAndReplacesNothing() {
    room.trays().record(call("HM-1", "Ovis aries", ANN));
    LookDesk desk = new LookDesk(room.trays(), room.draws(), new Queue(1, 0.05));
    desk.bringUpToDate();
    TrayBone before = room.trays().bone(BONE).orElseThrow();
    ElementCall tibia =
        new ElementCall(
            0, BONE, new ElementKey("tibia"), Side.RIGHT, Portion.SHAFT, BEN, NOW, "by eye");
    Call look =
        desk.lookAgain(call("HM-1", "Ovis aries", BEN), Optional.of(tibia)).value().orElseThrow();
    assertEquals(List.of(tibia.ofLook(look.id()).withId(1)), room.trays().elementCallsOn(BONE));
    assertEquals(before, room.trays().bone(BONE).orElseThrow());
    assertInstanceOf(Verdict.Sound.class, room.verifyDayBook());
  }

  @Test
  void boneThatMayBeHumanNeverWaitsAndCountsInNothing() {
    for (String bone : List.of("HM-1", "HM-2")) {
      room.trays().record(call(bone, "Ovis aries", ANN));
    }
    LookDesk desk = new LookDesk(room.trays(), room.draws(), new Queue(1, 0.05));
    desk.bringUpToDate();
    room.stops().setAside(BONE, ANN, NOW, "");
    assertEquals(
        List.of("HM-2"), desk.waitingFor(BEN).stream().map(w -> w.bone().id().value()).toList());
    desk.lookAgain(call("HM-2", "Capra hircus", BEN));
    assertEquals(1, desk.looks().size());
    assertEquals(1, desk.waitingFor(new PersonId("cat")).get(0).looks());
    room.stops().setAside(new BoneId("HM-2"), ANN, NOW, "");
    assertEquals(List.of(), desk.looks());
    assertEquals(List.of(), desk.waitingFor(new PersonId("cat")));
    assertInstanceOf(
        NotEstimable.class, desk.resolve(call("HM-2", "Ovis aries", ANN), Call.Kind.CONSENSUS));
  }

  private static String name(char letter) {
    return letter == 'S' ? "Ovis aries" : "Capra hircus";
  }

  @Test
  void whatWasDrawnStaysDrawnWhenTheRuleChanges() {
    room.trays().record(call("HM-1", "Ovis aries", ANN));
    new LookDesk(room.trays(), room.draws(), new Queue(1, 0.05)).bringUpToDate();
    room.trays().record(call("HM-2", "Ovis aries", ANN));
    new LookDesk(room.trays(), room.draws(), new Queue(100, 0.05)).bringUpToDate();
    assertEquals(
        List.of(true, false), room.draws().all().stream().map(d -> d.why().isPresent()).toList());
  }
}
