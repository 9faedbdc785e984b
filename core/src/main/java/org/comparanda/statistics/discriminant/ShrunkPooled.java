package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.SymmetricMatrix;

/**
 * Linear discriminant with the pooled correlations pulled towards none: where measurements are many
 * for the animals there are.
 *
 * <p>The residuals within groups, each column divided by its pooled standard deviation (divisor n −
 * k), give the intensity s by {@link LedoitWolf}; the variances of W stay, its covariances are
 * multiplied by 1 − s. So the units of a column do not matter. Needs two rows in some group and
 * spread in every column.
 */
public record ShrunkPooled() implements Discriminant {
  @Override
  public String name() {
    return "shrunk-pooled";
  }

  @Override
  public Outcome<DiscriminantModel> fit(GroupedRows rows, Priors priors) {
    GroupMoments moments = GroupMoments.of(rows);
    int df = moments.degreesOfFreedom();
    if (df < 1) {
      return Outcome.none(
          "No group has two animals, so there is no spread within groups.", "Add animals.");
    }
    SymmetricMatrix w = moments.scatter().times(1.0 / df);
    return priors
        .among(rows.groups(), moments::count)
        .then(checked -> intensity(rows, moments, w))
        .then(
            s -> {
              SymmetricMatrix pulled = w.times(1 - s).plus(w.diagonal().times(s));
              return Cholesky.of(pulled.plus(moments.oneSide()))
                  .then(
                      spread ->
                          Outcome.of(
                              PooledModel.of(
                                  moments, spread, priors, LogDensity.normal(), List.of(s))));
            });
  }

  /** The Ledoit–Wolf intensity of the standardised residuals. */
  static Outcome<Double> intensity(GroupedRows rows, GroupMoments moments, SymmetricMatrix w) {
    int p = rows.columns();
    double[] deviations = new double[p];
    for (int j = 0; j < p; j++) {
      deviations[j] = Math.sqrt(w.get(j, j));
      if (!(deviations[j] > 0)) {
        return Outcome.none(
            "Measurement " + (j + 1) + " of " + p + " does not vary within its groups.",
            "Leave it out, or add animals.");
      }
    }
    List<double[]> residuals = new ArrayList<>(rows.rows());
    for (int i = 0; i < rows.rows(); i++) {
      double[] away = Vectors.minus(rows.row(i), moments.meanOrZeros(rows.group(i)));
      residuals.add(Vectors.quotient(away, deviations));
    }
    return Outcome.of(LedoitWolf.ofCentred(p, residuals).intensity());
  }
}
