package org.comparanda.statistics.discriminant;

import java.util.List;
import java.util.stream.IntStream;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.Outcome;

/**
 * Full conformal ranks: the new row is added to a group, mean and W are computed again, and its D²
 * from the mean is ranked among those of the group's rows.
 *
 * <p>One row a unit is meant; plain W, also for a single side, for which the list is approximate.
 * Source: Vovk, Gammerman and Shafer 2005, Algorithmic learning in a random world.
 */
public final class Conformal {
  /** Distances that differ by less than this part are alike: the same row reckoned twice. */
  private static final double ALIKE = 1e-9;

  private final GroupMoments moments;
  private final int[] groups;
  private final Outcome<Whitened> whitened;

  /** Rows about their own means, in coordinates where A is 1. */
  private record Whitened(Cholesky scatter, List<double[]> residuals) {}

  private Conformal(GroupedRows rows) {
    this.moments = GroupMoments.of(rows);
    this.groups = IntStream.range(0, rows.rows()).map(rows::group).toArray();
    this.whitened =
        moments
            .pooledCovariance()
            .then(w -> Cholesky.of(moments.scatter()))
            .then(a -> Outcome.of(new Whitened(a, residuals(rows, a))));
  }

  /** For any number of new rows; needs n − k ≥ p without them. */
  public static Conformal of(GroupedRows rows) {
    return new Conformal(rows);
  }

  private List<double[]> residuals(GroupedRows rows, Cholesky scatter) {
    return IntStream.range(0, rows.rows())
        .mapToObj(
            i -> scatter.whiten(Vectors.minus(rows.row(i), moments.meanOrZeros(rows.group(i)))))
        .toList();
  }

  /** The rank of a new row in each group that has rows, in the order of the groups. */
  public Outcome<List<ConformalRank>> ranks(double... row) {
    double[] x = Vectors.checked(moments.columns(), row);
    return whitened.then(
        w ->
            Outcome.of(
                IntStream.range(0, moments.groups())
                    .filter(g -> moments.count(g) > 0)
                    .mapToObj(g -> rank(g, w, x))
                    .toList()));
  }

  /**
   * With v = x − mean and c = n / (n + 1) the scatter becomes A + c v vᵀ, and its inverse A⁻¹ − c
   * A⁻¹ v vᵀ A⁻¹ / (1 + c vᵀ A⁻¹ v) (Sherman and Morrison 1950); the group's own rows move by −v /
   * (n + 1), the new one lies at c v. The common factor n − k + 1 does not change ranks.
   */
  private ConformalRank rank(int group, Whitened whitened, double[] x) {
    int n = moments.count(group);
    double[] v = whitened.scatter().whiten(Vectors.minus(x, moments.mean(group)));
    double c = (double) n / (n + 1);
    double length = Vectors.dot(v, v);
    double pull = c / (1 + c * length);
    double own = c * c * length / (1 + c * length);
    double scaled = scaled(own, n + 1);
    int asFarInGroup = 1;
    int asFarInAll = 1;
    int comparable = 1;
    for (int i = 0; i < groups.length; i++) {
      boolean member = groups[i] == group;
      double squared = squared(whitened.residuals().get(i), v, pull, member ? -1.0 / (n + 1) : 0);
      int size = moments.count(groups[i]) + (member ? 1 : 0);
      asFarInGroup += member && squared >= own * (1 - ALIKE) ? 1 : 0;
      if (size > 1) {
        comparable++;
        asFarInAll += scaled(squared, size) >= scaled * (1 - ALIKE) ? 1 : 0;
      }
    }
    return new ConformalRank(
        group, n, (double) asFarInGroup / (n + 1), (double) asFarInAll / comparable, comparable);
  }

  /** (z + move · v)ᵀ (1 − pull v vᵀ) (z + move · v). */
  private static double squared(double[] z, double[] v, double pull, double move) {
    double square = 0;
    double along = 0;
    for (int j = 0; j < v.length; j++) {
      double at = z[j] + move * v[j];
      square += at * at;
      along += at * v[j];
    }
    return square - pull * along * along;
  }

  private static double scaled(double squared, double rowsOfGroup) {
    return squared * rowsOfGroup / (rowsOfGroup - 1);
  }
}
