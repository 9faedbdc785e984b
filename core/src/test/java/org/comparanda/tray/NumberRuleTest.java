package org.comparanda.tray;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.comparanda.bone.BoneAge;
import org.comparanda.measurement.BoneId;
import org.comparanda.tray.NumberRule.NumberSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberRuleTest {
  private static final Tray TRAY =
      new Tray(new TrayId("t7"), "L12", "Tray", BoneAge.RECENT, "", "", Tray.State.WAITING);

  @ParameterizedTest
  @CsvSource({
    "H-{year}-{number:4}, 17, H-2026-0017",
    "H-{year}-{number:4}, 12345, H-2026-12345",
    "{lot}/{tray}.{number}, 3, L12/t7.3",
    "{number:3}x, 9, 009x",
  })
  void aNumberIsWrittenAsItsRuleSays(String rule, long running, String expected) {
    assertEquals(new BoneId(expected), new NumberRule(rule).series(TRAY, 2026).number(running));
  }

  @ParameterizedTest
  @ValueSource(strings = {"H-{year}", "{number}{number}", "", "{page}-{number}", "{{number}"})
  void whatIsNoRuleIsRefusedWithAnExample(String text) {
    String said =
        NumberRule.read(text).fold(rule -> "read", none -> none.reason() + " " + none.remedy());
    assertTrue(said.startsWith("\"" + text + "\" "), said);
    assertTrue(said.contains("H-{year}-{number:4}"), said);
  }

  @Test
  void blanksAroundARuleDontCount() {
    assertEquals(Optional.of(new NumberRule("A{number}")), NumberRule.read("  A{number} ").value());
  }

  @Test
  void aSeriesKnowsItsOwnNumbersAndNoOthers() {
    NumberSeries series = new NumberRule("H-{year}-{number:4}").series(TRAY, 2026);
    assertEquals(17, series.runningIn(new BoneId("H-2026-0017")));
    assertEquals(0, series.runningIn(new BoneId("H-2025-0017")));
    assertEquals(0, series.runningIn(new BoneId("H-2026-17b")));
    assertEquals(0, series.runningIn(new BoneId("H-2026-")));
  }
}
