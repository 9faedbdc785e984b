package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.SymmetricMatrix;

/**
 * Linear discriminant with a covariance mixed from those of the groups: each group is standardised
 * (divisor n_g), its correlations are shrunk by {@link LedoitWolf}, scaled back, and the results
 * are averaged with the priors as weights.
 *
 * <p>Groups of one row have no spread; the priors of the others, scaled to sum 1, are the weights.
 */
public record ShrunkPerGroup() implements Discriminant {
  @Override
  public String name() {
    return "shrunk-per-taxon";
  }

  @Override
  public Outcome<DiscriminantModel> fit(GroupedRows rows, Priors priors) {
    GroupMoments moments = GroupMoments.of(rows);
    SymmetricMatrix sum = SymmetricMatrix.zero(rows.columns());
    double weights = 0;
    List<Double> intensities = new ArrayList<>();
    for (int g = 0; g < rows.groups(); g++) {
      if (moments.count(g) > 1) {
        LedoitWolf shrunk = shrunk(rows.onlyGroup(g), moments.mean(g));
        intensities.add(shrunk.intensity());
        sum = sum.plus(shrunk.covariance().times(priors.of(g)));
        weights += priors.of(g);
      } else {
        intensities.add(0.0);
      }
    }
    if (weights == 0) {
      return Outcome.none(
          "No group with a prior above 0 has two animals, so there is no spread within groups.",
          "Add animals.");
    }
    SymmetricMatrix covariance = sum.times(1 / weights);
    return priors
        .among(rows.groups(), moments::count)
        .then(checked -> Cholesky.of(covariance.plus(moments.oneSide())))
        .then(
            spread ->
                Outcome.of(
                    PooledModel.of(moments, spread, priors, LogDensity.normal(), intensities)));
  }

  /** The shrunk covariance of one group on the scale of the columns. */
  static LedoitWolf shrunk(GroupedRows group, double[] mean) {
    int p = group.columns();
    List<double[]> residuals =
        group.vectors().stream().map(row -> Vectors.minus(row, mean)).toList();
    SymmetricMatrix s = SymmetricMatrix.sumOfProducts(p, residuals).times(1.0 / residuals.size());
    double[] deviations = new double[p];
    for (int j = 0; j < p; j++) {
      deviations[j] = s.get(j, j) > 0 ? Math.sqrt(s.get(j, j)) : 1;
    }
    List<double[]> standardised =
        residuals.stream().map(row -> Vectors.quotient(row, deviations)).toList();
    LedoitWolf shrunk = LedoitWolf.ofCentred(p, standardised);
    return new LedoitWolf(shrunk.intensity(), shrunk.covariance().scaled(deviations));
  }
}
