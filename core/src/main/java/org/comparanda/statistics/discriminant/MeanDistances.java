package org.comparanda.statistics.discriminant;

import org.comparanda.statistics.Cholesky;

/** Squared distances from the groups' means in units of one given spread, plain or shrunk. */
final class MeanDistances {
  private final GroupMoments moments;
  private final Cholesky spread;
  private final double[] origin;
  private final double[][] whitened;

  MeanDistances(GroupMoments moments, Cholesky spread) {
    this.moments = moments;
    this.spread = spread;
    int first = 0;
    while (moments.count(first) == 0) {
      first++;
    }
    this.origin = moments.mean(first);
    this.whitened = new double[moments.groups()][];
    for (int g = 0; g < whitened.length; g++) {
      whitened[g] = spread.whiten(Vectors.minus(moments.meanOrZeros(g), origin));
    }
  }

  GroupMoments moments() {
    return moments;
  }

  Cholesky spread() {
    return spread;
  }

  /** The row in coordinates where D² is plain squared length. */
  double[] whiten(double... row) {
    return spread.whiten(Vectors.minus(Vectors.checked(moments.columns(), row), origin));
  }

  /** D² of a whitened row from the mean of a group that has rows. */
  double squared(double[] whitenedRow, int group) {
    return Vectors.squaredDistance(whitenedRow, whitened[group]);
  }

  /** A whitened row minus the mean of a group that has rows. */
  double[] away(double[] whitenedRow, int group) {
    return Vectors.minus(whitenedRow, whitened[group]);
  }

  double squaredBetween(int group, int other) {
    return Vectors.squaredDistance(whitened[group], whitened[other]);
  }
}
