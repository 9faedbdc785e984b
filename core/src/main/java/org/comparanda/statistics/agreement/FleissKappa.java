package org.comparanda.statistics.agreement;

import org.comparanda.statistics.Outcome;

/**
 * Fleiss' kappa of several raters (Fleiss 1971): κ = (P̄ − Σp²)/(1 − Σp²).
 *
 * <p>The standard error for the interval is that of leaving out each subject in turn; the one under
 * chance alone (Fleiss, Nee and Landis 1979) only tests whether agreement is better than chance.
 */
public final class FleissKappa {
  private final int[][] counts;
  private final int raters;

  private FleissKappa(int[][] counts, int raters) {
    this.counts = counts;
    this.raters = raters;
  }

  /**
   * Of a table: a row per subject, a column per category, each cell how many raters chose it; every
   * subject has the same number of raters.
   */
  public static Outcome<FleissKappa> of(int[][] counts) {
    int raters = counts.length == 0 ? 0 : sum(counts[0]);
    int[][] copy = new int[counts.length][];
    for (int i = 0; i < counts.length; i++) {
      if (sum(counts[i]) != raters) {
        return Outcome.none(
            "The subjects were judged by different numbers of people.",
            "Leave out those that lack a judgement.");
      }
      copy[i] = counts[i].clone();
    }
    if (counts.length < 3 || raters < 2) {
      return Outcome.none(
          "At least three subjects and two people are needed.", "Let more people judge more.");
    }
    return Outcome.of(new FleissKappa(copy, raters));
  }

  /** The kappa; not estimable where one category alone was used. */
  public Outcome<Kappa> kappa() {
    double whole = without(-1);
    double[] parts = new double[counts.length];
    double mean = 0;
    for (int i = 0; i < counts.length; i++) {
      parts[i] = without(i);
      mean += parts[i] / counts.length;
    }
    double squares = 0;
    for (double part : parts) {
      squares += (part - mean) * (part - mean);
    }
    double error = Math.sqrt((counts.length - 1.0) / counts.length * squares);
    if (!Double.isFinite(whole) || !Double.isFinite(error)) {
      return Outcome.none(
          "All (or all but one subject) were put into one category.",
          "Let them judge a more mixed lot.");
    }
    return Outcome.of(new Kappa(whole, error, pairsAgreeing(-1), counts.length));
  }

  /** Standard error if there were no agreement beyond chance. */
  public double standardErrorUnderChance() {
    double[] p = parts(-1);
    double pq = 0;
    double third = 0;
    for (double part : p) {
      pq += part * (1 - part);
      third += part * (1 - part) * (1 - 2 * part);
    }
    double n = counts.length;
    return Math.sqrt(2)
        / (pq * Math.sqrt(n * raters * (raters - 1.0)))
        * Math.sqrt(pq * pq - third);
  }

  private double without(int left) {
    double chance = 0;
    for (double part : parts(left)) {
      chance += part * part;
    }
    return (pairsAgreeing(left) - chance) / (1 - chance);
  }

  private double pairsAgreeing(int left) {
    double sum = 0;
    for (int i = 0; i < counts.length; i++) {
      if (i != left) {
        double squares = 0;
        for (int count : counts[i]) {
          squares += (double) count * count;
        }
        sum += (squares - raters) / (raters * (raters - 1.0));
      }
    }
    return sum / (left < 0 ? counts.length : counts.length - 1);
  }

  private double[] parts(int left) {
    double[] parts = new double[counts[0].length];
    double subjects = left < 0 ? counts.length : counts.length - 1.0;
    for (int i = 0; i < counts.length; i++) {
      if (i != left) {
        for (int j = 0; j < parts.length; j++) {
          parts[j] += counts[i][j] / (subjects * raters);
        }
      }
    }
    return parts;
  }

  private static int sum(int... row) {
    int sum = 0;
    for (int count : row) {
      sum += count;
    }
    return sum;
  }
}
