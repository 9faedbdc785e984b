package org.comparanda.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.LengthUnit;
import org.junit.jupiter.api.Test;

class CardLessonTest {
  private static CardLesson lesson(LengthUnit display, String... bursts) {
    return CardLesson.from("caliper 4", "S-1", display, List.of(bursts));
  }

  private static CaliperCard learned(LengthUnit display, String... bursts) {
    return assertInstanceOf(CardLesson.Learned.class, lesson(display, bursts)).card();
  }

  @Test
  void cardIsLearnedFromFiveReadings() {
    CaliperCard card =
        learned(
            LengthUnit.MILLIMETRE, "12,34\r\n", "9,87\r\n", "9,88\r\n", "0,51\r\n", "20,00\r\n");
    assertEquals(LengthUnit.MILLIMETRE, card.unit());
    assertEquals(',', card.decimalMark());
    assertEquals(2, card.fewestDecimals());
    assertEquals(2, card.decimals());
    assertEquals(LineEnd.CRLF, card.lineEnd());
    assertEquals(new Length(0.01), card.resolution());
  }

  @Test
  void commaWithThreeDecimalsIsNoThousandsOnASmallThing() {
    assertEquals(
        ',',
        learned(LengthUnit.MILLIMETRE, "1,234", "1,235", "1,231", "1,237", "1,232").decimalMark());
  }

  @Test
  void stepOfFiveIsSeen() {
    CaliperCard card = learned(LengthUnit.INCH, "0.5005", "0.5000", "0.4995", "0.5010", "0.5005");
    assertEquals(0.0127, card.resolution().mm(), 1e-15); // 0.0005 in; one rounding
  }

  @Test
  void droppedClosingZerosAreSeen() {
    CaliperCard card = learned(LengthUnit.MILLIMETRE, "12.34", "12.3", "12", "12.31", "12.35");
    assertEquals(0, card.fewestDecimals());
    assertEquals(2, card.decimals());
  }

  @Test
  void readingsThatDisagreeTeachNothing() {
    assertNotLearned(lesson(LengthUnit.MILLIMETRE, "1.2", "1.2", "1.2", "1.2"), "5 test readings");
    assertNotLearned(
        lesson(LengthUnit.MILLIMETRE, "1.2", "1,2", "1.2", "1.2", "1.2"), "Point and comma");
    assertNotLearned(
        lesson(LengthUnit.MILLIMETRE, "1.2\r", "1.2", "1.2", "1.2", "1.2"), "line ends");
    assertNotLearned(
        lesson(LengthUnit.MILLIMETRE, "1.2 in", "1.2 in", "1.2 in", "1.2 in", "1.2 in"),
        "another unit");
    assertNotLearned(
        lesson(LengthUnit.MILLIMETRE, "1.2.3", "1.2", "1.2", "1.2", "1.2"), "\"1.2.3\"");
    assertNotLearned(lesson(LengthUnit.MILLIMETRE, "0.0", "1.2", "1.2", "1.2", "1.2"), "\"0.0\"");
  }

  private static void assertNotLearned(CardLesson lesson, String part) {
    String reason = assertInstanceOf(CardLesson.NotLearned.class, lesson).reason();
    assertTrue(reason.contains(part), reason);
  }
}
