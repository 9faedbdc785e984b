package org.comparanda.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.capture.SideBySide.Turn;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Protocol;
import org.comparanda.measurement.Reading;
import org.junit.jupiter.api.Test;

/** Whose turn it is when left and right are measured together. Invented measurements A and B. */
class SideBySideTest {
  private static final ElementKey HUMERUS = new ElementKey("humerus");
  private static final Protocol PROTOCOL =
      new Protocol(List.of(), List.of(measurement("A"), measurement("B")), List.of());

  private long rows;
  private Passes left = passes("L");
  private Passes right = passes("R");

  private static Measurement measurement(String code) {
    return new Measurement(
        HUMERUS,
        new MeasurementCode(code),
        "invented",
        "",
        List.of(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        0.02,
        1,
        "invented");
  }

  private static Passes passes(String bone) {
    return Passes.restore(
        new BoneId(bone), HUMERUS, Portion.WHOLE, PROTOCOL, PassRules.withDefaults(), List.of());
  }

  private Turn turn() {
    return new SideBySide(left, right).turn();
  }

  private Passes read(Passes passes, String mm) {
    List<CaliperValue> values =
        CaliperText.withoutCard().typed(mm).fold(r -> r.values(), none -> List.of());
    Hand hand = new Hand(new PersonId("p1"), Instant.EPOCH, Optional.empty());
    List<Reading> given = new ArrayList<>();
    passes
        .accept(values, hand)
        .fold(
            append -> append.rows().stream().map(row -> given.add(row.withId(++rows))).toList(),
            move -> List.of(),
            refused -> List.of());
    return passes.with(given);
  }

  @Test
  void eachMeasurementIsTakenOnTheLeftThenOnTheRightInEveryPass() {
    List<Turn> turns = new ArrayList<>();
    for (String mm : List.of("10", "10", "20", "20", "10", "10", "20", "20")) {
      turns.add(turn());
      if (turn() == Turn.LEFT) {
        left = read(left, mm);
      } else {
        right = read(right, mm);
      }
    }
    assertEquals(
        List.of(
            Turn.LEFT,
            Turn.RIGHT,
            Turn.LEFT,
            Turn.RIGHT,
            Turn.LEFT,
            Turn.RIGHT,
            Turn.LEFT,
            Turn.RIGHT),
        turns);
    assertEquals(List.of(true, true), List.of(left.complete(), right.complete()));
  }

  @Test
  void theBoneThatWasBegunLaterCatchesUpFirst() {
    left = read(read(left, "10"), "20");
    assertEquals(Turn.RIGHT, turn());
    right = read(right, "10");
    assertEquals(Turn.RIGHT, turn());
    right = read(right, "20");
    assertEquals(Turn.LEFT, turn());
  }

  @Test
  void undoGoesToTheBoneWhoseReadingIsTheNewest() {
    left = read(left, "10");
    right = read(right, "10");
    assertEquals(Turn.RIGHT, new SideBySide(left, right).newest());
    left = read(left, "20");
    assertEquals(Turn.LEFT, new SideBySide(left, right).newest());
  }
}
