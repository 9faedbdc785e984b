package org.comparanda.statistics.discriminant;

import java.util.List;
import org.comparanda.statistics.SymmetricMatrix;

/** Turns p columns into fewer: one product with each axis. */
final class Axes {
  private final List<double[]> axes;

  /** At least one axis, all of p numbers; they are kept, not copied. */
  Axes(List<double[]> axes) {
    this.axes = List.copyOf(axes);
  }

  int count() {
    return axes.size();
  }

  double[] row(double... values) {
    double[] x = Vectors.checked(axes.get(0).length, values);
    double[] turned = new double[axes.size()];
    for (int i = 0; i < turned.length; i++) {
      for (int j = 0; j < x.length; j++) {
        turned[i] += axes.get(i)[j] * x[j];
      }
    }
    return turned;
  }

  /** Moments as those of the turned rows would be. */
  GroupMoments moments(GroupMoments moments) {
    int[] counts = new int[moments.groups()];
    double[][] means = new double[counts.length][];
    for (int g = 0; g < counts.length; g++) {
      counts[g] = moments.count(g);
      means[g] = row(moments.meanOrZeros(g));
    }
    return new GroupMoments(
        counts,
        means,
        turned(moments.scatter()),
        moments.sidePairs(),
        turned(moments.sideSpread()));
  }

  private SymmetricMatrix turned(SymmetricMatrix matrix) {
    int p = matrix.size();
    double[][] turned = new double[axes.size()][axes.size()];
    for (int i = 0; i < turned.length; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = 0;
        for (int a = 0; a < p; a++) {
          for (int b = 0; b < p; b++) {
            sum += axes.get(i)[a] * matrix.get(a, b) * axes.get(j)[b];
          }
        }
        turned[i][j] = sum;
        turned[j][i] = sum;
      }
    }
    return SymmetricMatrix.of(turned);
  }
}
