package org.comparanda.statistics.line;

import java.util.Arrays;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * Shapiro and Wilk's test of whether values look normal.
 *
 * <p>Source: Royston 1995, algorithm AS R94, Appl. Stat. 44:547-551 (coefficients from memory,
 * checked against R).
 *
 * @param w the statistic, 1 for perfectly normal spacing
 * @param p chance of a smaller w from normal values
 */
public record ShapiroWilk(double w, double p) {
  private static final double[] LAST = {0, 0.221157, -0.147981, -2.07119, 4.434685, -2.706056};
  private static final double[] LAST_BUT_ONE = {
    0, 0.042981, -0.293762, -1.752461, 5.682633, -3.582633
  };
  private static final double[] SMALL_MEAN = {0.544, -0.39978, 0.025054, -6.714e-4};
  private static final double[] SMALL_LOG_SD = {1.3822, -0.77857, 0.062767, -0.0020322};
  private static final double[] LARGE_MEAN = {-1.5861, -0.31082, -0.083751, 0.0038915};
  private static final double[] LARGE_LOG_SD = {-0.4803, -0.082676, 0.0030302};

  /** The test of 3 to 5000 values that are not all equal. */
  public static Outcome<ShapiroWilk> test(double[] values) {
    int n = values.length;
    if (n < 3 || n > 5000) {
      return Outcome.none(
          "Normality can't be tested on " + n + " values.", "3 to 5000 values are needed.");
    }
    double[] x = values.clone();
    Arrays.sort(x);
    double mean = CompensatedSum.mean(x);
    CompensatedSum squares = new CompensatedSum();
    for (double v : x) {
      squares.addProduct(v - mean, v - mean);
    }
    if (!(squares.value() > 0)) {
      return Outcome.none("All values are equal.", "Normality needs values that differ.");
    }
    double[] a = weights(n);
    CompensatedSum spread = new CompensatedSum();
    for (int i = 0; i < a.length; i++) {
      spread.addProduct(a[i], x[n - 1 - i] - x[i]);
    }
    double w = Math.min(1, spread.value() * spread.value() / squares.value());
    return Outcome.of(new ShapiroWilk(w, chance(w, n)));
  }

  private static double[] weights(int n) {
    double[] a = new double[n / 2];
    if (n == 3) {
      a[0] = Math.sqrt(0.5);
      return a;
    }
    double[] m = new double[n / 2];
    double squares = 0;
    for (int i = 0; i < m.length; i++) {
      m[i] = -Distributions.normalQuantile((i + 1 - 0.375) / (n + 0.25));
      squares += 2 * m[i] * m[i];
    }
    double root = 1 / Math.sqrt(n);
    a[0] = polynomial(LAST, root) + m[0] / Math.sqrt(squares);
    int done = 1;
    double restM = squares - 2 * m[0] * m[0];
    double restA = 1 - 2 * a[0] * a[0];
    if (n > 5) {
      a[1] = polynomial(LAST_BUT_ONE, root) + m[1] / Math.sqrt(squares);
      done = 2;
      restM -= 2 * m[1] * m[1];
      restA -= 2 * a[1] * a[1];
    }
    for (int i = done; i < a.length; i++) {
      a[i] = m[i] / Math.sqrt(restM / restA);
    }
    return a;
  }

  private static double chance(double w, int n) {
    if (n == 3) {
      double p = 6 / Math.PI * (Math.asin(Math.sqrt(w)) - Math.asin(Math.sqrt(0.75)));
      return Math.max(0, Math.min(1, p));
    }
    double y = Math.log(1 - w);
    if (n > 11) {
      double log = Math.log(n);
      return upper(y, polynomial(LARGE_MEAN, log), Math.exp(polynomial(LARGE_LOG_SD, log)));
    }
    double bound = -2.273 + 0.459 * n;
    return y >= bound
        ? 0
        : upper(
            -Math.log(bound - y), polynomial(SMALL_MEAN, n), Math.exp(polynomial(SMALL_LOG_SD, n)));
  }

  private static double upper(double y, double mean, double sd) {
    return Distributions.normalUpperTail((y - mean) / sd);
  }

  private static double polynomial(double[] c, double x) {
    double sum = 0;
    for (int i = c.length - 1; i >= 0; i--) {
      sum = sum * x + c[i];
    }
    return sum;
  }
}
