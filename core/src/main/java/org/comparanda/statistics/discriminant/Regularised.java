package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.SymmetricMatrix;

/**
 * Between linear and quadratic: the covariance of each group pulled towards the pooled one, the
 * pooled one pulled towards its diagonal.
 *
 * <p>W* = (1 − d) W + d · diag W; Σ_g = ((1 − w)(n_g − 1) S_g + w (n − k) W*) / ((1 − w)(n_g − 1) +
 * w (n − k)). After Friedman 1989, J. Am. Stat. Assoc. 84:165–175, whose second target is a
 * multiple of the identity; the diagonal instead keeps the answer free of the units of the columns.
 *
 * @param towardsPooled w, 0 (own covariance) to 1 (pooled); above 0
 * @param towardsDiagonal d, 0 to 1
 */
public record Regularised(double towardsPooled, double towardsDiagonal) implements Discriminant {
  public Regularised {
    if (!(towardsPooled > 0 && towardsPooled <= 1)
        || !(towardsDiagonal >= 0 && towardsDiagonal <= 1)) {
      throw new IllegalArgumentException(
          "Pulls lie between 0 and 1: " + towardsPooled + ", " + towardsDiagonal);
    }
  }

  @Override
  public String name() {
    return "regularised";
  }

  @Override
  public Outcome<DiscriminantModel> fit(GroupedRows rows, Priors priors) {
    GroupMoments moments = GroupMoments.of(rows);
    int df = moments.degreesOfFreedom();
    if (df < 1) {
      return Outcome.none(
          "No group has two animals, so there is no spread within groups.", "Add animals.");
    }
    SymmetricMatrix pulled =
        moments
            .scatter()
            .times(1 - towardsDiagonal)
            .plus(moments.scatter().diagonal().times(towardsDiagonal))
            .times(towardsPooled);
    List<SymmetricMatrix> covariances = new ArrayList<>();
    for (int g = 0; g < rows.groups(); g++) {
      SymmetricMatrix own = GroupMoments.of(rows.onlyGroup(g)).scatter();
      double ownDf = Math.max(0, moments.count(g) - 1);
      double divisor = (1 - towardsPooled) * ownDf + towardsPooled * df;
      covariances.add(
          own.times(1 - towardsPooled).plus(pulled).times(1 / divisor).plus(moments.oneSide()));
    }
    return OwnCovariances.of(moments, covariances, priors);
  }
}
