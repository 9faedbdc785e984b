package org.comparanda.statistics;

import java.util.OptionalDouble;

/**
 * So many hits in so many tries, with the intervals of their rate.
 *
 * <p>Wilson: Wilson 1927, J. Am. Stat. Assoc. 22:209–212. Exact: Clopper and Pearson 1934,
 * Biometrika 26:404–413. Zero tries say nothing: every interval is then 0 to 1. Errors: {@link
 * IllegalArgumentException} unless 0 ≤ hits ≤ tries.
 */
public record Proportion(int hits, int tries) {
  public Proportion {
    if (hits < 0 || hits > tries) {
      throw new IllegalArgumentException(hits + " hits in " + tries + " tries cannot be");
    }
  }

  /** Hits per try; empty without a try. */
  public OptionalDouble rate() {
    return tries == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) hits / tries);
  }

  /** Wilson's score interval, two limits. */
  public Interval wilson(double level) {
    double z = Distributions.normalQuantile(0.5 + 0.5 * level);
    return new Interval(wilsonLimit(-z), wilsonLimit(z), level);
  }

  /** Wilson's lower limit alone: the rate is higher than this with the confidence {@code level}. */
  public double wilsonLower(double level) {
    return wilsonLimit(-Distributions.normalQuantile(level));
  }

  /** The exact interval, two limits, each with half of what the level leaves. */
  public Interval exact(double level) {
    double side = 0.5 + 0.5 * level;
    double upper =
        hits == tries ? 1 : Distributions.betaQuantile(side, hits + 1.0, (double) tries - hits);
    return new Interval(exactLower(side), upper, level);
  }

  /**
   * The exact lower limit alone: the rate is higher than this with the confidence {@code level}.
   */
  public double exactLower(double level) {
    return hits == 0 ? 0 : Distributions.betaQuantile(1 - level, hits, tries - hits + 1.0);
  }

  private double wilsonLimit(double z) {
    if (tries == 0 || (hits == 0 && z < 0) || (hits == tries && z > 0)) {
      return z < 0 ? 0 : 1;
    }
    double n = tries;
    double rate = hits / n;
    double half = z * Math.sqrt(rate * (1 - rate) / n + z * z / (4 * n * n));
    return (rate + z * z / (2 * n) + half) / (1 + z * z / n);
  }
}
