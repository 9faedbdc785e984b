package org.comparanda.tray;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RefitTest {
  private static final Refit UPPER_AND_LOWER =
      new Refit(new BoneId("B-1"), List.of(Portion.PROXIMAL, Portion.DISTAL), Set.of());

  @ParameterizedTest
  @CsvSource({
    "PROXIMAL DISTAL, WHOLE",
    "PROXIMAL SHAFT DISTAL, WHOLE",
    "SHAFT PROXIMAL, PROXIMAL",
    "DISTAL OTHER SHAFT, DISTAL",
    "SHAFT SHAFT, SHAFT",
    "SHAFT OTHER, SHAFT",
    "OTHER OTHER, OTHER",
  })
  void piecesMakeTogetherWhatReachesFarthest(String pieces, Portion joined) {
    assertEquals(Optional.of(joined), Refit.joined(portions(pieces)).value());
  }

  @ParameterizedTest
  @CsvSource({"PROXIMAL PROXIMAL", "DISTAL SHAFT DISTAL", "WHOLE SHAFT", "PROXIMAL"})
  void piecesOfTwoBonesAreNotOne(String pieces) {
    assertTrue(Refit.joined(portions(pieces)).value().isEmpty());
  }

  @Test
  void aLengthCrossesTheBreakAndTheBreadthOfOneEndDoesNot() {
    assertTrue(UPPER_AND_LOWER.crosses(measurement("GL", Portion.WHOLE)));
    assertEquals(false, UPPER_AND_LOWER.crosses(measurement("Bd", Portion.WHOLE, Portion.DISTAL)));
  }

  @Test
  void aPersonMarksWhatElseCrossesItAndTakesItBack() {
    Measurement breadth = measurement("SD", Portion.WHOLE, Portion.DISTAL);
    Refit marked = UPPER_AND_LOWER.toggled(new MeasurementCode("SD"));
    assertTrue(marked.crosses(breadth));
    assertEquals(UPPER_AND_LOWER, marked.toggled(new MeasurementCode("SD")));
  }

  private static List<Portion> portions(String words) {
    return Arrays.stream(words.split(" ")).map(Portion::valueOf).toList();
  }

  private static Measurement measurement(String code, Portion... needs) {
    return new Measurement(
        new ElementKey("humerus"),
        new MeasurementCode(code),
        "invented",
        "",
        List.of(),
        Optional.empty(),
        List.of(needs),
        Optional.empty(),
        0.02,
        1,
        "invented");
  }
}
