package org.comparanda.statistics.discriminant;

import java.util.Arrays;
import org.comparanda.statistics.Outcome;

/** Shares from the squared distances in units of one pooled spread. */
final class PooledModel implements DiscriminantModel {
  private final GroupDistances distances;
  private final Priors priors;
  private final LogDensity density;

  /** Log density of a row at a squared distance from the mean of so many rows, up to a constant. */
  interface LogDensity {
    double at(double rows, double squared);
  }

  private PooledModel(GroupDistances distances, Priors priors, LogDensity density) {
    this.distances = distances;
    this.priors = priors;
    this.density = density;
  }

  static Outcome<DiscriminantModel> of(GroupMoments moments, Priors priors, LogDensity density) {
    return priors
        .among(moments.groups(), moments::count)
        .then(checked -> GroupDistances.of(moments))
        .then(distances -> Outcome.of(new PooledModel(distances, priors, density)));
  }

  @Override
  public Shares shares(double... row) {
    double[] logDensities = new double[priors.weights().size()];
    Arrays.fill(logDensities, Double.NEGATIVE_INFINITY);
    for (GroupDistance d : distances.to(row)) {
      logDensities[d.group()] = density.at(d.rows(), d.squared());
    }
    return Shares.of(priors, logDensities);
  }
}
