package org.comparanda.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.comparanda.statistics.DaysToFinish.Forecast;
import org.junit.jupiter.api.Test;

class DaysToFinishTest {
  private static Forecast forecast(List<Integer> days, int left) {
    return DaysToFinish.of(days, left, 1).value().orElseThrow();
  }

  // By hand: seven a day, thirty left: five days, whatever is drawn.
  @Test
  void evenPaceHasOneAnswer() {
    Forecast five = forecast(List.of(7, 7, 7, 7, 7), 30);
    assertEquals(5, five.days().lower());
    assertEquals(5, five.days().upper());
    assertEquals(5, five.from());
  }

  // Days of one or two bones, as many of each: N ≤ k if Binomial(k, 1/2) ≥ left − k. SciPy 1.17.1,
  // binom.sf: for 20 left P(N ≤ 10) = 0.001, P(N ≤ 11) = 0.033, P(N ≤ 15) = 0.941, P(N ≤ 16) =
  // 0.989; for 40 left P(N ≤ 26) = 0.42, P(N ≤ 27) = 0.65. 4,000 runs are off by 0.008 at most.
  @Test
  void limitsAreThoseOfTheExactDistribution() {
    Forecast twenty = forecast(List.of(1, 2, 1, 2, 1, 2), 20);
    assertEquals(11, twenty.days().lower());
    assertEquals(16, twenty.days().upper());
    assertEquals(27, forecast(List.of(1, 2, 1, 2, 1, 2), 40).median());
  }

  @Test
  void fourDaysAreTooFew() {
    assertInstanceOf(NotEstimable.class, DaysToFinish.of(List.of(9, 9, 9, 9), 30, 1));
  }

  @Test
  void nothingLeftIsDone() {
    assertEquals(0, forecast(List.of(1, 2, 3, 4, 5), 0).days().upper());
  }
}
