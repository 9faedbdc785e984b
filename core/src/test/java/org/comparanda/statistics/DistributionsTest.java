package org.comparanda.statistics;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.junit.jupiter.api.Test;

class DistributionsTest {
  // R 4.2.2, stats: qnorm, qt, qchisq, qf, qbeta, pnorm, pt, pchisq, pf, pbeta; k_quantiles.csv.
  // 1e-10 relative: both sides iterate to nearly full precision; what is left is the
  // conditioning of tails and quantiles near their ends. R gives qf as df2/df1 (1/qbeta - 1), which
  // leaves an absolute error of a few 1e-16 df2/df1 in its small quantiles: those have that
  // allowance
  // (smallQuantilesOfFKeepTheirDigits checks ours there against the closed form).
  @Test
  void quantilesAndTailsAreThoseOfR() {
    OutsideCheck check =
        OutsideCheck.named("quantiles", "R 4.2.2 stats q* and p*: expected/k_quantiles.csv");
    assertAll(
        OutsideTable.read("expected/k_quantiles.csv").rows().stream()
            .map(
                row ->
                    () -> {
                      String call =
                          "%s(%s, %s, %s)"
                              .formatted(
                                  row.text("fn"),
                                  row.text("p_or_x"),
                                  row.text("df1"),
                                  row.text("df2"));
                      double expected = row.number("value");
                      if (row.text("fn").equals("qf") && expected < 0.001) {
                        double grain = 1e-15 * row.number("df2") / row.number("df1");
                        check.absolute(call, expected, ours(row), grain);
                      } else {
                        check.relative(call, expected, ours(row), 1e-10);
                      }
                    }));
  }

  private static double ours(OutsideTable.Row row) {
    double x = row.number("p_or_x");
    double a = row.has("df1") ? row.number("df1") : 0;
    double b = row.has("df2") ? row.number("df2") : 0;
    return switch (row.text("fn")) {
      case "qnorm" -> Distributions.normalQuantile(x);
      case "qt" -> Distributions.tQuantile(x, a);
      case "qchisq" -> Distributions.chiSquareQuantile(x, a);
      case "qf" -> Distributions.fQuantile(x, a, b);
      case "qbeta" -> Distributions.betaQuantile(x, a, b);
      case "pnorm" -> Distributions.normalLowerTail(x);
      case "pt_upper" -> Distributions.tUpperTail(x, a);
      case "pchisq_upper" -> Distributions.chiSquareUpperTail(x, a);
      case "pf_upper" -> Distributions.fUpperTail(x, a, b);
      case "pbeta" -> Distributions.betaLowerTail(x, a, b);
      default -> throw new AssertionError("no such function: " + row.text("fn"));
    };
  }

  // Two degrees of freedom have closed forms: chi-square exp(-x/2), F(2, m) (1 + 2f/m)^(-m/2).
  @Test
  void faintTailsKeepTheirDigits() {
    assertEquals(Math.exp(-250), Distributions.chiSquareUpperTail(500, 2), 1e-12 * Math.exp(-250));
    double expected = Math.exp(-20 * Math.log1p(2 * 1000 / 40.0));
    assertEquals(expected, Distributions.fUpperTail(1000, 2, 40), 1e-12 * expected);
  }

  // F(2, m): p = 1 - (1 + 2f/m)^(-m/2), so f = m/2 ((1 - p)^(-2/m) - 1).
  @Test
  void smallQuantilesOfFKeepTheirDigits() {
    double expected = 11 * Math.expm1(-Math.log1p(-1e-12) / 11);
    assertEquals(expected, Distributions.fQuantile(1e-12, 2, 22), 1e-12 * expected);
  }

  // Cornish and Fisher 1937: t = z + (z^3 + z) / (4 df) + O(1/df^2), here within 1e-12.
  @Test
  void manyDegreesOfFreedomAreNearlyNormal() {
    double z = Distributions.normalQuantile(0.95);
    double expected = z + (z * z * z + z) / 4e6;
    assertEquals(expected, Distributions.tQuantile(0.95, 1e6), 1e-11);
  }

  @Test
  void aProbabilityOfOneHasNoQuantile() {
    assertThrows(IllegalArgumentException.class, () -> Distributions.tQuantile(1, 5));
    assertThrows(IllegalArgumentException.class, () -> Distributions.chiSquareQuantile(0.5, 0));
  }
}
