package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.FTail;
import org.comparanda.statistics.Outcome;

/**
 * Distances from the groups' means in units of the pooled spread, with their typicality and the
 * part of each measurement.
 *
 * <p>The spread is W, with ½ W_side on top where a single side is judged; never a shrunk one.
 * Typicality: F = D² n_g (n − k − p + 1) / ((n_g + 1) p (n − k)) on p and n − k − p + 1 degrees of
 * freedom, Hotelling's T² of one new row against the mean of n_g (docs/methods.md).
 */
public final class GroupDistances {
  private final GroupMoments moments;
  private final MeanDistances means;
  private final FTail tail;

  private GroupDistances(MeanDistances means) {
    this.moments = means.moments();
    this.means = means;
    this.tail = new FTail(moments.columns(), moments.degreesOfFreedom() - moments.columns() + 1.0);
  }

  /** Not estimable where n − k &lt; p or measurements repeat one another. */
  public static Outcome<GroupDistances> of(GroupMoments moments) {
    return moments
        .spread()
        .then(Cholesky::of)
        .then(spread -> Outcome.of(new GroupDistances(new MeanDistances(moments, spread))));
  }

  public GroupMoments moments() {
    return moments;
  }

  /** Distance and typicality for every group that has rows, in the order of the groups. */
  public List<GroupDistance> to(double... row) {
    double[] z = means.whiten(row);
    List<GroupDistance> distances = new ArrayList<>(moments.groups());
    for (int g = 0; g < moments.groups(); g++) {
      if (moments.count(g) > 0) {
        double squared = means.squared(z, g);
        distances.add(new GroupDistance(g, moments.count(g), squared, typicality(g, squared)));
      }
    }
    return distances;
  }

  /** D² from the mean of a group that has rows. */
  public double squared(int group, double... row) {
    requirePresent(group);
    return means.squared(means.whiten(row), group);
  }

  /** D² between the means of two groups that have rows. */
  public double squaredBetween(int group, int other) {
    requirePresent(group);
    requirePresent(other);
    return means.squaredBetween(group, other);
  }

  /** Chance that a new row of the group lies at a squared distance of at least {@code squared}. */
  public double typicality(int group, double squared) {
    requirePresent(group);
    double n = moments.count(group);
    double p = moments.columns();
    double df = moments.degreesOfFreedom();
    double f = squared * n * (df - p + 1) / ((n + 1) * p * df);
    return tail.of(f);
  }

  /** The part of each measurement in D² from the group, in the order of the columns. */
  public List<Contribution> contributions(int group, double... row) {
    double[] away = Vectors.minus(Vectors.checked(columns(), row), moments.mean(group));
    double[] solved = means.spread().solve(away);
    List<Contribution> parts = new ArrayList<>(columns());
    for (int j = 0; j < columns(); j++) {
      double[] unit = new double[columns()];
      unit[j] = 1;
      double drop = solved[j] * solved[j] / means.spread().squaredDistance(unit);
      parts.add(new Contribution(j, away[j] * solved[j], drop));
    }
    return parts;
  }

  /**
   * The part of each measurement in ½ (D² from {@code other} − D² from {@code group}), the log of
   * how much better the row fits {@code group} under equal priors; in the order of the columns.
   */
  public List<Double> preference(int group, int other, double... row) {
    double[] a = moments.mean(group);
    double[] b = moments.mean(other);
    double[] slope = means.spread().solve(Vectors.minus(a, b));
    double[] x = Vectors.checked(columns(), row);
    List<Double> parts = new ArrayList<>(columns());
    for (int j = 0; j < columns(); j++) {
      parts.add(slope[j] * (x[j] - 0.5 * (a[j] + b[j])));
    }
    return parts;
  }

  private int columns() {
    return moments.columns();
  }

  private void requirePresent(int group) {
    if (moments.count(group) == 0) {
      throw new IllegalArgumentException("Group " + group + " has no rows");
    }
  }
}
