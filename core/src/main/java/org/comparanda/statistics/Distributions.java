package org.comparanda.statistics;

import org.apache.commons.math3.special.Erf;
import org.apache.commons.math3.special.Gamma;

/**
 * Tails and quantiles of the normal, t, chi-square, F and beta distributions.
 *
 * <p>An upper tail is computed as such, never as 1 minus the lower one: a tail of 1e-20 keeps its
 * digits. Quantiles take the lower probability p, 0 &lt; p &lt; 1, and are solved on whichever tail
 * is smaller. Degrees of freedom and shapes may be fractions. Errors: {@link
 * IllegalArgumentException} if an argument lies outside its range. Checked against R 4.2.2 (see
 * docs/methods.md).
 */
public final class Distributions {
  private static final double SMALLEST_LOG = -740;
  private static final double LARGEST_LOG = 700;

  private Distributions() {}

  /** Chance that a standard normal value is at least z. */
  public static double normalUpperTail(double z) {
    return 0.5 * Erf.erfc(z / Math.sqrt(2));
  }

  /** Chance that a standard normal value is at most z. */
  public static double normalLowerTail(double z) {
    return normalUpperTail(-z);
  }

  /** The z below which a standard normal value falls with chance p. */
  public static double normalQuantile(double p) {
    requireProbability(p);
    if (p == 0.5) {
      return 0;
    }
    double target = Math.log(Math.min(p, 1 - p));
    double below =
        IncreasingRoot.find(
            z -> Math.log(normalLowerTail(z)) - target,
            z -> Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI) / normalLowerTail(z),
            -38,
            0);
    return p < 0.5 ? below : -below;
  }

  /** Chance that Student's t with df degrees of freedom is at least t. */
  public static double tUpperTail(double t, double df) {
    requirePositive("degrees of freedom", df);
    if (t < 0) {
      return 1 - tUpperTail(-t, df);
    }
    double logOdds = t == 0 ? Double.POSITIVE_INFINITY : Math.log(df) - 2 * Math.log(t);
    return t == 0 ? 0.5 : 0.5 * new IncompleteBeta(0.5 * df, 0.5).lower(logOdds);
  }

  /** Chance that Student's t with df degrees of freedom is at most t. */
  public static double tLowerTail(double t, double df) {
    return tUpperTail(-t, df);
  }

  /** The t below which Student's t with df degrees of freedom falls with chance p. */
  public static double tQuantile(double p, double df) {
    requireProbability(p);
    requirePositive("degrees of freedom", df);
    if (p == 0.5) {
      return 0;
    }
    double bothTails = 2 * Math.min(p, 1 - p);
    double between = Math.abs(2 * p - 1);
    double logOdds = new IncompleteBeta(0.5, 0.5 * df).quantile(between, bothTails);
    double size = Math.sqrt(df) * Math.exp(0.5 * logOdds);
    return p < 0.5 ? -size : size;
  }

  /** Chance that chi-square with df degrees of freedom is at least x. */
  public static double chiSquareUpperTail(double x, double df) {
    requirePositive("degrees of freedom", df);
    return x <= 0 ? 1 : Gamma.regularizedGammaQ(0.5 * df, 0.5 * x, 1e-15, 100_000);
  }

  /** The x below which chi-square with df degrees of freedom falls with chance p. */
  public static double chiSquareQuantile(double p, double df) {
    requireProbability(p);
    requirePositive("degrees of freedom", df);
    double a = 0.5 * df;
    double logGamma = Gamma.logGamma(a);
    double target = p <= 0.5 ? Math.log(p) : Math.log(1 - p);
    double log =
        p <= 0.5
            ? IncreasingRoot.find(
                u -> Math.log(gammaLower(a, u)) - target,
                u -> Math.exp(a * u - Math.exp(u) - logGamma) / gammaLower(a, u),
                SMALLEST_LOG,
                LARGEST_LOG)
            : IncreasingRoot.find(
                u -> target - Math.log(gammaUpper(a, u)),
                u -> Math.exp(a * u - Math.exp(u) - logGamma) / gammaUpper(a, u),
                SMALLEST_LOG,
                LARGEST_LOG);
    return 2 * Math.exp(log);
  }

  /** Chance that F with df1 and df2 degrees of freedom is at least f. */
  public static double fUpperTail(double f, double df1, double df2) {
    return new FTail(df1, df2).of(f);
  }

  /** The f below which F with df1 and df2 degrees of freedom falls with chance p. */
  public static double fQuantile(double p, double df1, double df2) {
    requireProbability(p);
    requirePositive("degrees of freedom", df1);
    requirePositive("degrees of freedom", df2);
    return df2 / df1 * Math.exp(new IncompleteBeta(0.5 * df1, 0.5 * df2).quantile(p, 1 - p));
  }

  /** Chance that a beta value with the shapes a and b is at most x. */
  public static double betaLowerTail(double x, double a, double b) {
    requirePositive("shape", a);
    requirePositive("shape", b);
    if (x <= 0 || x >= 1) {
      return x <= 0 ? 0 : 1;
    }
    return new IncompleteBeta(a, b).lower(Math.log(x) - Math.log1p(-x));
  }

  /** The x below which a beta value with the shapes a and b falls with chance p. */
  public static double betaQuantile(double p, double a, double b) {
    requireProbability(p);
    requirePositive("shape", a);
    requirePositive("shape", b);
    return 1 / (1 + Math.exp(-new IncompleteBeta(a, b).quantile(p, 1 - p)));
  }

  private static double gammaLower(double a, double logHalf) {
    return Gamma.regularizedGammaP(a, Math.exp(logHalf), 1e-15, 100_000);
  }

  private static double gammaUpper(double a, double logHalf) {
    return Gamma.regularizedGammaQ(a, Math.exp(logHalf), 1e-15, 100_000);
  }

  private static void requireProbability(double p) {
    if (!(p > 0 && p < 1)) {
      throw new IllegalArgumentException("A probability between 0 and 1 is needed, not " + p);
    }
  }

  private static void requirePositive(String what, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("Positive " + what + " needed, not " + value);
    }
  }
}
