package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.SymmetricMatrix;

/** Normal shares where every group has a covariance of its own. */
final class OwnCovariances implements DiscriminantModel {
  private final GroupMoments moments;
  private final List<Optional<Cholesky>> spreads;
  private final Priors priors;

  private OwnCovariances(GroupMoments moments, List<Optional<Cholesky>> spreads, Priors priors) {
    this.moments = moments;
    this.spreads = spreads;
    this.priors = priors;
  }

  /** One covariance for each group; that of a group without rows is not looked at. */
  static Outcome<DiscriminantModel> of(
      GroupMoments moments, List<SymmetricMatrix> covariances, Priors priors) {
    Outcome<List<Optional<Cholesky>>> spreads = Outcome.of(new ArrayList<>());
    for (int g = 0; g < covariances.size(); g++) {
      Outcome<Optional<Cholesky>> spread =
          moments.count(g) > 0
              ? Cholesky.of(covariances.get(g)).then(s -> Outcome.of(Optional.of(s)))
              : Outcome.of(Optional.empty());
      spreads =
          spreads.then(
              soFar ->
                  spread.then(
                      next -> {
                        soFar.add(next);
                        return Outcome.of(soFar);
                      }));
    }
    Outcome<List<Optional<Cholesky>>> all = spreads;
    return priors
        .among(moments.groups(), moments::count)
        .then(checked -> all)
        .then(each -> Outcome.of(new OwnCovariances(moments, each, priors)));
  }

  @Override
  public Shares shares(double... row) {
    double[] x = Vectors.checked(moments.columns(), row);
    double[] logDensities = new double[spreads.size()];
    for (int g = 0; g < logDensities.length; g++) {
      double[] away = Vectors.minus(x, moments.meanOrZeros(g));
      logDensities[g] =
          spreads
              .get(g)
              .map(s -> -0.5 * (s.logDeterminant() + s.squaredDistance(away)))
              .orElse(Double.NEGATIVE_INFINITY);
    }
    return Shares.of(priors, logDensities);
  }
}
