package org.comparanda.statistics.robust;

import java.util.List;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * One value against a sample.
 *
 * @param statistic G or t
 * @param degreesOfFreedom of t
 * @param p two-sided chance
 */
public record SingleValue(double value, double statistic, int degreesOfFreedom, double p) {
  /**
   * The value furthest from the mean of its own sample: G = |x − mean| / sd; p = 2n P(t(n−2) ≥
   * √(n(n − 2)G² / ((n − 1)² − nG²))), at most 1. Source: Grubbs 1950.
   */
  public static Outcome<SingleValue> furthestOf(List<Double> sample) {
    int n = sample.size();
    double sd = deviation(sample);
    if (n < 3 || !(sd > 0)) {
      return tooFew();
    }
    double mean = mean(sample);
    double furthest = sample.get(0);
    for (double x : sample) {
      furthest = Math.abs(x - mean) > Math.abs(furthest - mean) ? x : furthest;
    }
    double g = Math.abs(furthest - mean) / sd;
    double rest = (n - 1.0) * (n - 1) - n * g * g;
    double t = Math.sqrt(n * (n - 2) * g * g / Math.max(rest, Double.MIN_NORMAL));
    double p = Math.min(1, 2 * n * Distributions.tUpperTail(t, n - 2));
    return Outcome.of(new SingleValue(furthest, g, n - 2, p));
  }

  /** A value that is not of the sample: t = (x − mean) / (sd √((n + 1)/n)) on n − 1. */
  public static Outcome<SingleValue> against(List<Double> sample, double value) {
    int n = sample.size();
    double sd = deviation(sample);
    if (n < 2 || !(sd > 0)) {
      return tooFew();
    }
    double t = (value - mean(sample)) / (sd * Math.sqrt((n + 1.0) / n));
    return Outcome.of(
        new SingleValue(value, t, n - 1, 2 * Distributions.tUpperTail(Math.abs(t), n - 1)));
  }

  private static double mean(List<Double> sample) {
    return sample.stream().mapToDouble(x -> x).sum() / Math.max(1, sample.size());
  }

  private static double deviation(List<Double> sample) {
    double mean = mean(sample);
    double sum = sample.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
    return Math.sqrt(sum / Math.max(1, sample.size() - 1));
  }

  private static Outcome<SingleValue> tooFew() {
    return Outcome.none("There are too few values, or they don't vary.", "Measure more animals.");
  }
}
