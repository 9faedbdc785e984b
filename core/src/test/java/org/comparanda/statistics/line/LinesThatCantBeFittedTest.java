package org.comparanda.statistics.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.comparanda.statistics.Outcome;
import org.junit.jupiter.api.Test;

class LinesThatCantBeFittedTest {
  @Test
  void twoRowsAreTooFew() {
    assertEquals(
        "A line with 1 predictor(s) can't be fitted to 2 row(s).",
        reason(LeastSquares.withIntercept().fit(rows(1, 2))));
    assertEquals(
        "A line can't be fitted to 2 row(s).",
        reason(StandardisedMajorAxis.withDefaults().fit(rows(1, 2))));
  }

  @Test
  void equalPredictorsGiveNoLine() {
    Design flat = Design.of(new double[] {0.1, 0.1, 0.1, 0.1}, new double[] {1, 2, 3, 4});
    assertEquals(
        "All values of predictor 1 are equal.", reason(LeastSquares.withIntercept().fit(flat)));
    assertEquals(
        "All values of x or all values of y are equal.",
        reason(MajorAxis.withDefaults().fit(flat)));
  }

  @Test
  void logOfZeroGivesNoLine() {
    Design log = Design.of(new double[] {Math.log(0), 1, 2}, new double[] {1, 2, 3});
    assertEquals(
        "A value of the line is not a finite number.",
        reason(LeastSquares.withIntercept().fit(log)));
  }

  @Test
  void predictorsThatFollowFromEachOtherGiveNoLine() {
    Design twice =
        Design.of(
            List.of(List.of(1.0, 2.0), List.of(2.0, 4.0), List.of(3.0, 6.0), List.of(7.0, 14.0)),
            List.of(1.0, 2.5, 3.0, 8.0));
    assertEquals(
        "One predictor follows exactly from the others.",
        reason(LeastSquares.withIntercept().fit(twice)));
  }

  @Test
  void uncorrelatedRowsHaveNoMajorAxis() {
    Design cross = Design.of(new double[] {-1, 1, 0, 0}, new double[] {0, 0, -1, 1});
    assertEquals(
        "x and y are not correlated at all, so the axis has no direction.",
        reason(StandardisedMajorAxis.withDefaults().fit(cross)));
  }

  @Test
  void equalResponsesHaveNoPartExplained() {
    Design level = Design.of(new double[] {1, 2, 3}, new double[] {5, 5, 5});
    LeastSquaresFit fit = LeastSquares.withIntercept().fit(level).value().orElseThrow();
    assertTrue(fit.rSquared().value().isEmpty());
    assertEquals(0, fit.slope(0).value(), 1e-15); // rounding
  }

  @Test
  void anAnimalThatAloneDecidesTheSlopeCantBeHeldOut() {
    Design lone = Design.of(new double[] {1, 1, 1, 2}, new double[] {1, 2, 3, 4});
    LeastSquaresFit fit = LeastSquares.withIntercept().fit(lone).value().orElseThrow();
    Diagnostics diagnostics = Diagnostics.of(lone, fit);
    assertTrue(diagnostics.press().value().isEmpty());
    assertTrue(diagnostics.rows().get(3).heldOutFit().value().isEmpty());
    assertTrue(diagnostics.rows().get(0).heldOutFit().value().isPresent());
  }

  @Test
  void slopesOfOneGroupOrOfOppositeGroupsAreNotCompared() {
    Design up = Design.of(new double[] {1, 2, 3}, new double[] {1, 2, 3.5});
    Design down = Design.of(new double[] {1, 2, 3}, new double[] {3.5, 2, 1});
    assertEquals("One group has nothing to share.", reason(CommonSlope.test(List.of(up))));
    assertEquals(
        "The slopes of the groups run in opposite directions.",
        reason(CommonSlope.test(List.of(up, down))));
  }

  @Test
  void aMixtureNeedsAShareAboveZero() {
    assertEquals(
        "No line has a share above zero and a spread.",
        reason(TMixture.of(List.of(new TMixture.Part(0, 1, 1, 3)))));
  }

  @Test
  void normalityNeedsThreeValuesThatDiffer() {
    assertEquals(
        "Normality can't be tested on 2 values.", reason(ShapiroWilk.test(new double[] {1, 2})));
    assertEquals("All values are equal.", reason(ShapiroWilk.test(new double[] {2, 2, 2})));
  }

  private static Design rows(double... x) {
    return Design.of(x, x);
  }

  private static String reason(Outcome<?> outcome) {
    return outcome.fold(Object::toString, none -> none.reason());
  }
}
