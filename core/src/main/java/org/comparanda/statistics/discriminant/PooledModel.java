package org.comparanda.statistics.discriminant;

import java.util.List;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.Outcome;

/** Shares from the squared distances in units of one pooled spread, plain or shrunk. */
final class PooledModel implements DiscriminantModel {
  private final MeanDistances distances;
  private final Priors priors;
  private final LogDensity density;
  private final List<Double> shrinkage;

  private PooledModel(
      MeanDistances distances, Priors priors, LogDensity density, List<Double> shrinkage) {
    this.distances = distances;
    this.priors = priors;
    this.density = density;
    this.shrinkage = shrinkage;
  }

  /** With the plain spread of the moments. */
  static Outcome<DiscriminantModel> of(GroupMoments moments, Priors priors, LogDensity density) {
    return priors
        .among(moments.groups(), moments::count)
        .then(checked -> moments.spread())
        .then(Cholesky::of)
        .then(c -> Outcome.of(of(moments, c, priors, density, List.of())));
  }

  /** With a spread of another making. */
  static DiscriminantModel of(
      GroupMoments moments,
      Cholesky spread,
      Priors priors,
      LogDensity density,
      List<Double> shrinkage) {
    return new PooledModel(new MeanDistances(moments, spread), priors, density, shrinkage);
  }

  @Override
  public Shares shares(double... row) {
    GroupMoments moments = distances.moments();
    double[] z = distances.whiten(row);
    double[] logDensities = new double[moments.groups()];
    for (int g = 0; g < logDensities.length; g++) {
      logDensities[g] =
          moments.count(g) > 0
              ? density.at(moments.count(g), distances.squared(z, g))
              : Double.NEGATIVE_INFINITY;
    }
    return Shares.of(priors, logDensities);
  }

  @Override
  public List<Double> shrinkage() {
    return shrinkage;
  }
}
