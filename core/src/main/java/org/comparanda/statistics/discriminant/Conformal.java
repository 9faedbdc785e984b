package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
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

  private final GroupedRows rows;
  private final GroupMoments moments;

  private Conformal(GroupedRows rows) {
    this.rows = rows;
    this.moments = GroupMoments.of(rows);
  }

  public static Conformal of(GroupedRows rows) {
    return new Conformal(rows);
  }

  /** The rank of a new row in each group that has rows, in the order of the groups. */
  public Outcome<List<ConformalRank>> ranks(double... row) {
    double[] x = Vectors.checked(rows.columns(), row);
    Outcome<List<ConformalRank>> all = Outcome.of(new ArrayList<>());
    for (int g = 0; g < rows.groups(); g++) {
      if (moments.count(g) > 0) {
        int group = g;
        all =
            all.then(
                soFar ->
                    rank(group, x)
                        .then(
                            rank -> {
                              soFar.add(rank);
                              return Outcome.of(soFar);
                            }));
      }
    }
    return all.then(list -> Outcome.of(List.copyOf(list)));
  }

  private Outcome<ConformalRank> rank(int group, double[] x) {
    int n = moments.count(group);
    double[] shift = Vectors.minus(x, moments.mean(group));
    double[][] means = new double[rows.groups()][];
    int[] counts = new int[rows.groups()];
    for (int g = 0; g < means.length; g++) {
      counts[g] = moments.count(g) + (g == group ? 1 : 0);
      means[g] =
          g == group ? Vectors.plus(moments.mean(g), 1.0 / (n + 1), shift) : moments.meanOrZeros(g);
    }
    GroupMoments with =
        new GroupMoments(
            counts,
            means,
            moments.scatter().plusProduct((double) n / (n + 1), shift),
            0,
            moments.sideSpread());
    return with.pooledCovariance()
        .then(Cholesky::of)
        .then(spread -> Outcome.of(rank(group, x, with, spread)));
  }

  private ConformalRank rank(int group, double[] x, GroupMoments with, Cholesky spread) {
    double own = spread.squaredDistance(Vectors.minus(x, with.mean(group)));
    double scaled = scaled(own, with.count(group));
    int asFarInGroup = 1;
    int asFarInAll = 1;
    int comparable = 1;
    for (int i = 0; i < rows.rows(); i++) {
      int g = rows.group(i);
      double squared = spread.squaredDistance(Vectors.minus(rows.row(i), with.mean(g)));
      asFarInGroup += g == group && squared >= own * (1 - ALIKE) ? 1 : 0;
      if (with.count(g) > 1) {
        comparable++;
        asFarInAll += scaled(squared, with.count(g)) >= scaled * (1 - ALIKE) ? 1 : 0;
      }
    }
    return new ConformalRank(
        group,
        moments.count(group),
        (double) asFarInGroup / with.count(group),
        (double) asFarInAll / comparable);
  }

  private static double scaled(double squared, double rowsOfGroup) {
    return squared * rowsOfGroup / (rowsOfGroup - 1);
  }
}
