package org.comparanda.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.LengthUnit;
import org.junit.jupiter.api.Test;

class GaugeCheckTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final GaugeCheck CHECK = GaugeCheck.withDefaults();
  private static final CaliperCard CARD = card();

  private static CaliperCard card() {
    List<String> five = List.of("12.34\r", "23.41\r", "34.12\r", "41.23\r", "13.24\r");
    CardLesson lesson = CardLesson.from("Caliper 1", "", LengthUnit.MILLIMETRE, five);
    return assertInstanceOf(CardLesson.Learned.class, lesson).card();
  }

  @Test
  void aCheckOfNinetyDaysIsFreshAndOneDayMoreIsOld() {
    assertEquals(Optional.empty(), CHECK.caution(CARD.withLastCheck(TODAY.minusDays(90)), TODAY));
    assertEquals(
        "\"Caliper 1\" was last checked on a gauge block 91 days ago (at most 90). Check it before"
            + " you go on.",
        CHECK.caution(CARD.withLastCheck(TODAY.minusDays(91)), TODAY).orElseThrow());
  }

  @Test
  void aCaliperThatWasNeverCheckedSaysSo() {
    assertTrue(CHECK.caution(CARD, TODAY).orElseThrow().contains("never checked"));
  }

  @Test
  void aCheckInTheFutureIsDoubted() {
    assertTrue(
        CHECK.caution(CARD.withLastCheck(TODAY.plusDays(1)), TODAY).orElseThrow().contains("date"));
  }
}
