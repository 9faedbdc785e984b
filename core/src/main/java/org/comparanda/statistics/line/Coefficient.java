package org.comparanda.statistics.line;

import org.comparanda.statistics.Distributions;

/** A fitted coefficient with its standard error, t distributed on the degrees of freedom. */
public record Coefficient(double value, double standardError, int degreesOfFreedom) {
  /** Where the true coefficient lies. */
  public ConfidenceInterval interval(double level) {
    double reach = Distributions.tQuantile(0.5 + level / 2, degreesOfFreedom) * standardError;
    return new ConfidenceInterval(value - reach, value + reach, level);
  }

  /** Two-sided probability of a t at least this far from zero. */
  public double p() {
    return 2 * Distributions.tUpperTail(Math.abs(value / standardError), degreesOfFreedom);
  }
}
