package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.SymmetricMatrix;

/**
 * Quadratic discriminant: every group with its own covariance S_g (divisor n_g − 1), log share = ln
 * prior − ½ ln det S_g − ½ D². Needs more rows than measurements in every group.
 */
public record Quadratic() implements Discriminant {
  @Override
  public String name() {
    return "quadratic";
  }

  @Override
  public Outcome<DiscriminantModel> fit(GroupedRows rows, Priors priors) {
    GroupMoments moments = GroupMoments.of(rows);
    List<SymmetricMatrix> covariances = new ArrayList<>();
    for (int g = 0; g < rows.groups(); g++) {
      int n = moments.count(g);
      if (n > 0 && n <= rows.columns()) {
        return Outcome.none(
            "Quadratic: group %d has %d animals; its own covariance of %d measurements needs %d."
                .formatted(g + 1, n, rows.columns(), rows.columns() + 1),
            "Use another method, or add animals.");
      }
      SymmetricMatrix own = GroupMoments.of(rows.onlyGroup(g)).scatter();
      covariances.add(n == 0 ? own : own.times(1.0 / (n - 1)).plus(moments.oneSide()));
    }
    return OwnCovariances.of(moments, covariances, priors);
  }
}
