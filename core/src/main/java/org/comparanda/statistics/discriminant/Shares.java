package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;

/**
 * Posterior probabilities of the groups, in their order, summing to 1; a group that has no rows or
 * no prior has 0.
 *
 * <p>They say which of these groups, even if none is right: never show them without typicality.
 */
public record Shares(List<Double> values) {
  public Shares {
    values = List.copyOf(values);
  }

  /**
   * Shares in proportion to prior · exp(log density); minus infinity for a group out of play, which
   * not all may be.
   */
  static Shares of(Priors priors, double[] logDensities) {
    double[] weights = new double[logDensities.length];
    double largest = Double.NEGATIVE_INFINITY;
    for (int g = 0; g < weights.length; g++) {
      weights[g] = Math.log(priors.of(g)) + logDensities[g];
      largest = Math.max(largest, weights[g]);
    }
    if (largest == Double.NEGATIVE_INFINITY) {
      throw new IllegalArgumentException("No group is in play");
    }
    double sum = 0;
    for (double w : weights) {
      sum += Math.exp(w - largest);
    }
    List<Double> shares = new ArrayList<>(weights.length);
    for (double w : weights) {
      shares.add(Math.exp(w - largest) / sum);
    }
    return new Shares(shares);
  }

  public double of(int group) {
    return values.get(group);
  }

  /** The group of largest share, the first of several equal ones. */
  public int largest() {
    int best = 0;
    for (int g = 1; g < values.size(); g++) {
      if (values.get(g) > values.get(best)) {
        best = g;
      }
    }
    return best;
  }

  /** −Σ share ln share, in nats: 0 where one group has all, ln k where k groups are alike. */
  public double entropy() {
    double sum = 0;
    for (double share : values) {
      sum -= share > 0 ? share * Math.log(share) : 0;
    }
    return sum;
  }
}
