package org.comparanda.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Protocol;
import org.comparanda.measurement.Reading;
import org.comparanda.measurement.ReadingLog;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Two passes, a third take where they disagree. Invented measurements A, B, C; tolerance 0.02. */
class PassesTest {
  private static final ElementKey HUMERUS = new ElementKey("humerus");
  private static final ElementKey FEMUR = new ElementKey("femur");
  private static final BoneId BONE = new BoneId("HM-1");
  private static final MeasurementCode A = new MeasurementCode("A");
  private static final MeasurementCode B = new MeasurementCode("B");
  private static final MeasurementCode C = new MeasurementCode("C");
  private static final Protocol PROTOCOL =
      new Protocol(
          List.of(),
          List.of(
              measurement(HUMERUS, A, Portion.WHOLE),
              measurement(HUMERUS, B, Portion.WHOLE),
              measurement(HUMERUS, C, Portion.DISTAL),
              measurement(FEMUR, A, Portion.WHOLE)),
          List.of());
  private static final Clock CLOCK = Clock.fixed(Instant.EPOCH, ZoneOffset.UTC);

  private ListLog log;
  private Measuring measuring;

  @BeforeEach
  void start() {
    log = new ListLog(new ArrayList<>());
    measuring = measuring(HUMERUS, PassRules.withDefaults());
  }

  private static Measurement measurement(ElementKey element, MeasurementCode code, Portion also) {
    return new Measurement(
        element,
        code,
        "invented",
        "",
        List.of(),
        Optional.empty(),
        List.of(Portion.WHOLE, also),
        Optional.empty(),
        0.02,
        1,
        "invented");
  }

  /** A log in memory: a list that gives running numbers. */
  private record ListLog(List<Reading> rows) implements ReadingLog {
    @Override
    public List<Reading> append(List<Reading> readings) {
      List<Reading> given = new ArrayList<>();
      for (Reading reading : readings) {
        given.add(reading.withId(rows.size() + 1L));
        rows.add(given.get(given.size() - 1));
      }
      return given;
    }

    @Override
    public List<Reading> of(BoneId bone) {
      return List.copyOf(rows);
    }
  }

  private Measuring measuring(ElementKey element, PassRules rules) {
    return new Measuring(
        Passes.restore(BONE, element, Portion.WHOLE, PROTOCOL, rules, log.of(BONE)),
        log,
        CLOCK,
        new PersonId("p1"));
  }

  private void type(String... texts) {
    for (String text : texts) {
      assertEquals(Optional.empty(), measuring.acceptTyped(text), text);
    }
  }

  private Place current() {
    return measuring.passes().current().orElseThrow();
  }

  @Test
  void everyMeasurementIsTakenOnceThenAllAgain() {
    assertEquals(new Place(A, 1), current());
    type("10", "20", "30");
    assertEquals(new Place(A, 2), current());
    assertTrue(measuring.passes().boneDown());
    type("10.1");
    assertFalse(measuring.passes().boneDown());
    type("20.1", "30.1");
    assertTrue(measuring.passes().complete());
    // means of two by hand: (10 + 10.1) / 2 and so on; 1e-12: two roundings
    assertEquals(10.05, measuring.passes().values().get(A), 1e-12);
    assertEquals(20.05, measuring.passes().values().get(B), 1e-12);
    assertEquals(30.05, measuring.passes().values().get(C), 1e-12);
  }

  @Test
  void valuesAreThereFromTheFirstPassOn() {
    type("10");
    assertEquals(Map.of(A, 10.0), measuring.passes().values());
  }

  @Test
  void thirdTakeComesBeyondToleranceAndTheMedianCounts() {
    type("10", "20", "30", "10.5", "20", "30"); // 0.5 of 10.25 is more than 0.02 of it
    assertEquals(new Place(A, 3), current());
    assertTrue(measuring.passes().boneDown());
    type("10.4");
    assertTrue(measuring.passes().complete());
    assertEquals(10.4, measuring.passes().values().get(A), 0.0);
    assertEquals(3, measuring.passes().counting(A).size());
  }

  @Test
  void differenceOfExactlyTheToleranceIsWithinIt() {
    type("99", "20", "30", "101", "20", "30"); // 2 of a mean of 100
    assertTrue(measuring.passes().complete());
  }

  @Test
  void firstPassIsHiddenDuringTheSecond() {
    type("10", "20", "30");
    assertEquals(List.of(), measuring.passes().visible(A));
    type("10.1");
    assertEquals(
        List.of("10.1"), measuring.passes().visible(A).stream().map(Reading::asTyped).toList());
    type("20", "30");
    assertEquals(2, measuring.passes().visible(A).size());
  }

  @Test
  void notPossibleIsRecordedAndLeftOutOfTheSecondPass() {
    type("10");
    measuring.notPossible(NotPossible.WORN);
    type("30");
    assertEquals(List.of(new Place(A, 2), new Place(C, 2)), measuring.passes().places(2));
    Reading row = log.rows().get(1);
    assertEquals(Reading.Kind.NOT_POSSIBLE, row.kind());
    assertEquals("WORN", row.reason());
    assertEquals(Optional.empty(), row.length());
  }

  @Test
  void undoIsAWithdrawalRowAndTheFieldIsOpenAgain() {
    type("10", "20");
    assertEquals(Optional.empty(), measuring.undo());
    assertEquals(new Place(B, 1), current());
    assertEquals(3, log.rows().size());
    assertEquals(Reading.Kind.WITHDRAWAL, log.rows().get(2).kind());
    assertEquals(Optional.of(2L), log.rows().get(2).pointsAt());
    measuring.undo();
    assertEquals(new Place(A, 1), current());
    assertEquals(Optional.of("There is no reading to undo."), measuring.undo());
  }

  @Test
  void readingAtThePreviousFieldIsACorrectionAndUndoBringsTheOldOneBack() {
    type("10", "20");
    measuring.previous();
    assertEquals(new Place(B, 1), current());
    type("21");
    assertEquals(Reading.Kind.CORRECTION, log.rows().get(2).kind());
    assertEquals(Optional.of(2L), log.rows().get(2).pointsAt());
    assertEquals(21.0, measuring.passes().values().get(B), 0.0);
    assertEquals(new Place(C, 1), current());
    measuring.undo();
    assertEquals(20.0, measuring.passes().values().get(B), 0.0);
  }

  @Test
  void previousStopsAtTheFirstFieldOfThePass() {
    assertTrue(measuring.previous().isPresent());
    type("10", "20", "30");
    assertTrue(measuring.previous().isPresent());
    assertEquals(new Place(A, 2), current());
  }

  @Test
  void takesBackToBackAreRefusedUnlessTheHouseAllowsThem() {
    type("10");
    assertTrue(measuring.anotherTake().isPresent());
    measuring = measuring(HUMERUS, PassRules.withDefaults().withRepeats(PassRules.Repeats.ALLOWED));
    assertEquals(Optional.empty(), measuring.anotherTake());
    type("10.2");
    assertEquals(List.of(false, true), log.rows().stream().map(Reading::repeat).toList());
    assertEquals(new Place(B, 1), current());
    assertEquals(10.1, measuring.passes().values().get(A), 1e-12); // mean by hand; two roundings
  }

  @Test
  void afterAllPassesOneMoreTakeIsAThirdPass() {
    type("10", "20", "30", "10", "20", "30.2");
    assertEquals(Optional.empty(), measuring.anotherTake());
    assertEquals(new Place(C, 3), current());
    type("30.1");
    assertEquals(30.1, measuring.passes().values().get(C), 0.0);
    assertFalse(log.rows().get(6).repeat());
    assertTrue(measuring.passes().complete());
  }

  @Test
  void twoValuesOfABurstFillTwoFieldsAndMoreThanThePassHoldsAreRefused() {
    assertEquals(Optional.empty(), measuring.acceptBurst("10.0\r20.0\r", Optional.empty()));
    assertEquals(new Place(C, 1), current());
    assertTrue(measuring.acceptBurst("30.0\r10.0\r", Optional.empty()).isPresent());
    assertEquals(2, log.rows().size());
  }

  @Test
  void refusedTextRecordsNothing() {
    assertTrue(measuring.acceptTyped("1,234").isPresent());
    assertEquals(List.of(), log.rows());
    assertEquals(new Place(A, 1), current());
  }

  @Test
  void acceptedProposalKeepsWhatWasTyped() {
    CaliperInput.Read read =
        assertInstanceOf(CaliperInput.Read.class, CaliperText.withoutCard().typed("1.25"));
    measuring.acceptProposal(
        read.values().get(0),
        new org.comparanda.measurement.Length(31.75),
        "These look like inches",
        Optional.empty());
    Reading row = log.rows().get(0);
    assertEquals("1.25", row.asTyped());
    assertEquals(31.75, row.length().orElseThrow().mm(), 0.0);
    assertEquals("These look like inches", row.reason());
  }

  @Test
  void elementSwitchLosesNoReading() {
    type("10", "20");
    measuring = measuring(FEMUR, PassRules.withDefaults());
    assertEquals(new Place(A, 1), current());
    assertEquals(Map.of(), measuring.passes().values());
    type("50");
    measuring = measuring(HUMERUS, PassRules.withDefaults());
    assertEquals(new Place(C, 1), current());
    assertEquals(Map.of(A, 10.0, B, 20.0), measuring.passes().values());
  }

  @Test
  void fragmentHasOnlyTheMeasurementsOfItsPortion() {
    Passes distal =
        Passes.restore(
            BONE, HUMERUS, Portion.DISTAL, PROTOCOL, PassRules.withDefaults(), List.of());
    assertEquals(List.of(new Place(C, 1)), distal.places(1));
  }

  /** Any commands in any order: the state always follows from the log alone. */
  @Test
  void everythingComesBackFromTheLog() {
    long seed = 20417;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 300; run++) {
      start();
      PassRules rules = PassRules.withDefaults().withRepeats(PassRules.Repeats.ALLOWED);
      measuring = measuring(HUMERUS, rules);
      for (int i = 0; i < 25; i++) {
        String where = "seed " + seed + ", run " + run + ", command " + i;
        int rowsBefore = log.rows().size();
        boolean recorded = act(random);
        assertTrue(log.rows().size() >= rowsBefore, where);
        if (recorded) {
          Passes restored = measuring(HUMERUS, rules).passes();
          assertEquals(measuring.passes().current(), restored.current(), where);
          assertEquals(measuring.passes().values(), restored.values(), where);
        }
      }
    }
  }

  /** Whether the command recorded something, so that no field was merely gone to. */
  private boolean act(SplittableRandom random) {
    int before = log.rows().size();
    switch (random.nextInt(6)) {
      case 0 -> measuring.undo();
      case 1 -> measuring.previous();
      case 2 -> measuring.anotherTake();
      case 3 -> measuring.notPossible(NotPossible.BROKEN);
      default -> measuring.acceptTyped(String.valueOf(10 + random.nextInt(3)));
    }
    return log.rows().size() > before;
  }

  @Test
  void takeAcrossABreakSaysSoInTheLogAndOthersDont() {
    measuring =
        new Measuring(
            Passes.restore(
                    BONE, HUMERUS, Portion.WHOLE, PROTOCOL, PassRules.withDefaults(), log.of(BONE))
                .withAcrossBreak(Set.of(B)),
            log,
            CLOCK,
            new PersonId("p1"));
    type("10", "20");
    assertEquals("", log.rows().get(0).reason());
    assertEquals("across a break. ", log.rows().get(1).reason());
    type("30", "10.1");
    measuring.acceptProposal(
        CaliperText.withoutCard()
            .typed("2.01")
            .fold(read -> read.values().get(0), PassesTest::none),
        new Length(20.1),
        "Ten times too small.",
        Optional.empty());
    assertEquals("across a break. Ten times too small.", log.rows().get(4).reason());
    assertEquals("2.01", log.rows().get(4).asTyped());
  }

  private static CaliperValue none(CaliperInput.Refused refused) {
    throw new AssertionError(refused.reason());
  }
}
