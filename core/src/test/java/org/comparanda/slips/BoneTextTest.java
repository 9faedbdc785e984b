package org.comparanda.slips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.Portion;
import org.comparanda.measurement.Reading;
import org.comparanda.pile.Arrival;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tray.Call;
import org.comparanda.tray.Tray;
import org.junit.jupiter.api.Test;

class BoneTextTest {
  private static BoneText in(Locale language) {
    return new BoneText(
        new SlipFacts(
            Paper.A4,
            "invented",
            "test",
            Instant.parse("2026-11-25T10:00:00Z"),
            "0",
            SlipFacts.DataKind.SIMULATED,
            ReferenceTables.shipped().protocol(),
            person -> person.value(),
            language,
            UnaryOperator.identity()));
  }

  @Test
  void everyWordThatAPageMayNeedIsThere() {
    Map<String, List<? extends Enum<?>>> words =
        Map.of(
            "portion", List.of(Portion.values()),
            "age", List.of(BoneAge.values()),
            "state", List.of(Tray.State.values()),
            "stage", List.of(Arrival.Stage.values()),
            "kind", List.of(Call.Kind.values()),
            "reading", List.of(Reading.Kind.values()));
    for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
      BoneText text = in(language);
      words.forEach(
          (kind, all) -> all.forEach(word -> assertFalse(text.word(kind, word).isBlank())));
    }
  }

  @Test
  void numbersAreWrittenInTheLanguageOfThePage() {
    assertEquals("0.9731", in(Locale.ENGLISH).chance(0.97314));
    assertEquals("0,9731", in(Locale.GERMAN).chance(0.97314));
    assertEquals("7,9 %", in(Locale.GERMAN).written("7.9 %"));
    assertEquals("1e-20", in(Locale.ENGLISH).chance(1e-20));
  }

  @Test
  void wholeNumbersAreWrittenWithoutGrouping() {
    assertEquals(
        "1234 bones: 1200 called, 34 not yet",
        in(Locale.ENGLISH).say("card.bones", 1234, 1200L, 34L));
    assertEquals(
        "1234 Knochen: 1200 bestimmt, 34 noch nicht",
        in(Locale.GERMAN).say("card.bones", 1234, 1200L, 34L));
    assertEquals(", 1234 set aside: may be human", in(Locale.ENGLISH).say("card.stopped", 1234L));
  }
}
