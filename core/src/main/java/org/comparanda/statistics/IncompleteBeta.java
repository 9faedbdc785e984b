package org.comparanda.statistics;

import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.util.ContinuedFraction;

/**
 * Regularised incomplete beta function I(a, b) at the point with odds x / (1 − x) = e^w.
 *
 * <p>The log odds w keep both x and 1 − x to full relative precision, so that t, F and beta tails
 * such as 1e-20 and their quantiles come out right. Continued fraction: Abramowitz and Stegun 1964,
 * 26.5.8.
 */
final class IncompleteBeta {
  private static final double WIDEST = 744;
  private static final double PRECISION = 1e-15;
  private static final int TERMS = 100_000;

  private final double a;
  private final double b;
  private final double logBeta;

  IncompleteBeta(double a, double b) {
    this(a, b, Beta.logBeta(a, b));
  }

  private IncompleteBeta(double a, double b, double logBeta) {
    this.a = a;
    this.b = b;
    this.logBeta = logBeta;
  }

  /** I(a, b), from its own tail wherever that is the small one. */
  double lower(double logOdds) {
    double x = 1 / (1 + Math.exp(-logOdds));
    return x <= (a + 1) / (a + b + 2)
        ? small(x, logOdds)
        : 1 - swapped().small(1 / (1 + Math.exp(logOdds)), -logOdds);
  }

  /** 1 − I(a, b), never by subtraction where it is small. */
  double upper(double logOdds) {
    return swapped().lower(-logOdds);
  }

  /** The log odds at which the lower tail is p and the upper q = 1 − p; the smaller one counts. */
  double quantile(double p, double q) {
    if (q < p) {
      return -swapped().quantile(q, p);
    }
    double target = Math.log(p);
    return IncreasingRoot.find(
        w -> Math.log(lower(w)) - target, w -> Math.exp(logDensity(w)) / lower(w), -WIDEST, WIDEST);
  }

  private IncompleteBeta swapped() {
    return new IncompleteBeta(b, a, logBeta);
  }

  /** ln of x^a (1 − x)^b / B(a, b): the density on the scale of the log odds. */
  private double logDensity(double w) {
    return -a * logOnePlusExp(-w) - b * logOnePlusExp(w) - logBeta;
  }

  /** ln(1 + e^w): minus the log of 1 − x; for −w, minus the log of x. */
  private static double logOnePlusExp(double w) {
    return Math.max(w, 0) + Math.log1p(Math.exp(-Math.abs(w)));
  }

  private double small(double x, double logOdds) {
    ContinuedFraction fraction =
        new ContinuedFraction() {
          @Override
          protected double getB(int n, double at) {
            double m = Math.floor(n / 2.0);
            return n % 2 == 0
                ? m * (b - m) * at / ((a + 2 * m - 1) * (a + 2 * m))
                : -((a + m) * (a + b + m) * at) / ((a + 2 * m) * (a + 2 * m + 1));
          }

          @Override
          protected double getA(int n, double at) {
            return 1;
          }
        };
    return Math.exp(logDensity(logOdds)) / (a * fraction.evaluate(x, PRECISION, TERMS));
  }
}
