package org.comparanda.statistics.discriminant;

import java.util.List;
import java.util.stream.IntStream;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.Outcome;

/**
 * Squared distances of every row from the groups' means, the row itself left out, in closed form.
 *
 * <p>Without a row that lies v from the mean of its n, A becomes A − c v vᵀ with c = n / (n − 1),
 * and its inverse A⁻¹ + c A⁻¹ v vᵀ A⁻¹ / (1 − c vᵀ A⁻¹ v) (Sherman and Morrison 1950); the mean
 * left lies c v from the row. In coordinates where A is 1 that takes a few products for each group.
 * The same numbers as {@link UnitMoments} gives, for rows of which each is a unit of its own and
 * without side pairs.
 */
final class HeldOutDistances {
  private static final double LEAST_LEFT = 1e-12;

  private final GroupedRows rows;
  private final GroupMoments moments;
  private final MeanDistances means;

  private HeldOutDistances(GroupedRows rows, MeanDistances means) {
    this.rows = rows;
    this.moments = means.moments();
    this.means = means;
  }

  static Outcome<HeldOutDistances> of(GroupedRows rows) {
    long units = IntStream.range(0, rows.rows()).map(rows::unit).distinct().count();
    if (units < rows.rows() || rows.sides().count() > 0) {
      return Outcome.none("Rows share units, or a single side is judged.", "Refit without each.");
    }
    GroupMoments moments = GroupMoments.of(rows);
    return moments
        .pooledCovariance()
        .then(w -> Cholesky.of(moments.scatter()))
        .then(a -> Outcome.of(new HeldOutDistances(rows, new MeanDistances(moments, a))));
  }

  /** n − k of every fit that a row is judged by, its group still there. */
  int degreesOfFreedom() {
    return moments.degreesOfFreedom() - 1;
  }

  /** Rows of a group when this row is left out. */
  int count(int row, int group) {
    return moments.count(group) - (rows.group(row) == group ? 1 : 0);
  }

  /**
   * D² by group, anything for a group without rows; not estimable for an only row of its group, or
   * if the others do not spread enough.
   */
  Outcome<List<Double>> of(int row) {
    int own = rows.group(row);
    double n = moments.count(own);
    double[] x = means.whiten(rows.row(row));
    double[] v = means.away(x, own);
    double c = n / (n - 1);
    double left = 1 - c * Vectors.dot(v, v);
    if (n < 2 || degreesOfFreedom() < moments.columns() || left < LEAST_LEFT) {
      return Outcome.none("Without this animal too few are left.", "Add animals.");
    }
    return Outcome.of(
        IntStream.range(0, moments.groups())
            .mapToObj(g -> degreesOfFreedom() * squared(means.away(x, g), v, c, left, g == own))
            .toList());
  }

  private static double squared(double[] away, double[] v, double c, double left, boolean own) {
    double along = Vectors.dot(away, v);
    return own ? c * c * along / left : Vectors.dot(away, away) + c * along * along / left;
  }
}
