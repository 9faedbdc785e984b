package org.comparanda.statistics.agreement;

import org.comparanda.statistics.Outcome;

/**
 * Cohen's kappa of two raters, with the asymptotic standard error of Fleiss, Cohen and Everitt
 * (1969).
 *
 * <p>κ = (p_o − p_e)/(1 − p_e), p_o = Σ w p, p_e = Σ w p_i. p_.j; variance = (Σ p (w − (w̄_i. +
 * w̄_.j)(1 − κ))² − (κ − p_e(1 − κ))²)/(n(1 − p_e)²).
 */
public final class CohenKappa {
  private CohenKappa() {}

  /**
   * Kappa of a square table of counts: rows the first rater, columns the second, both in the same
   * order of categories.
   */
  public static Outcome<Kappa> of(int[][] counts, Weights weights) {
    int k = counts.length;
    int n = 0;
    for (int[] row : counts) {
      if (row.length != k) {
        throw new IllegalArgumentException("The table of two raters must be square.");
      }
      for (int count : row) {
        n += count;
      }
    }
    if (n == 0 || k < 2) {
      return Outcome.none(
          "Agreement needs at least two categories and one subject.", "Judge more of them twice.");
    }
    double[] first = new double[k];
    double[] second = new double[k];
    double same = 0;
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        double p = counts[i][j] / (double) n;
        first[i] += p;
        second[j] += p;
        same += i == j ? p : 0;
      }
    }
    double observed = 0;
    double chance = 0;
    double[] meanOfFirst = new double[k];
    double[] meanOfSecond = new double[k];
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        double w = weights.of(i, j, k);
        observed += w * counts[i][j] / n;
        chance += w * first[i] * second[j];
        meanOfFirst[i] += w * second[j];
        meanOfSecond[j] += w * first[i];
      }
    }
    if (chance >= 1) {
      return Outcome.none(
          "Both raters used one category alone, so chance agrees as often as they do.",
          "Let them judge a more mixed lot.");
    }
    double kappa = (observed - chance) / (1 - chance);
    double sum = 0;
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        double off = weights.of(i, j, k) - (meanOfFirst[i] + meanOfSecond[j]) * (1 - kappa);
        sum += counts[i][j] / (double) n * off * off;
      }
    }
    double centre = kappa - chance * (1 - kappa);
    double variance = Math.max(0, sum - centre * centre) / (n * (1 - chance) * (1 - chance));
    return Outcome.of(new Kappa(kappa, Math.sqrt(variance), same, n));
  }
}
