package org.comparanda.statistics;

/**
 * The upper tail of F with given degrees of freedom, for many values of F. Errors: {@link
 * IllegalArgumentException} unless both degrees of freedom are above 0; they may be fractions.
 */
public final class FTail {
  private final IncompleteBeta beta;
  private final double logRatio;

  public FTail(double df1, double df2) {
    if (!(df1 > 0 && df2 > 0 && df1 + df2 < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "Positive degrees of freedom needed, not " + df1 + " and " + df2);
    }
    this.beta = new IncompleteBeta(0.5 * df2, 0.5 * df1);
    this.logRatio = Math.log(df2) - Math.log(df1);
  }

  /** Chance that F is at least f, as a tail: 1e-20 keeps its digits. */
  public double of(double f) {
    return f <= 0 ? 1 : beta.lower(logRatio - Math.log(f));
  }
}
