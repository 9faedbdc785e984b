package org.comparanda.statistics.agreement;

import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Interval;

/**
 * Agreement beyond chance.
 *
 * @param value 1 for perfect, 0 for no better than chance
 * @param standardError asymptotic for two raters, by leaving out each subject for several
 * @param observed part of the judgements (or pairs of them) that agree, weights not counted
 * @param subjects how many were judged
 */
public record Kappa(double value, double standardError, double observed, int subjects) {
  /** Normal interval, cut at 1. */
  public Interval interval(double level) {
    double z = Distributions.normalQuantile(0.5 + level / 2);
    return new Interval(
        value - z * standardError, Math.max(value, Math.min(1, value + z * standardError)), level);
  }
}
