package org.comparanda.statistics.robust;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.SymmetricMatrix;

/** Mean and covariance of some of the rows, and the step to the rows nearest to them. */
final class Concentration {
  private final int[] subset;
  private final double[] mean;
  private final Cholesky spread;

  private Concentration(int[] subset, double[] mean, Cholesky spread) {
    this.subset = subset;
    this.mean = mean;
    this.spread = spread;
  }

  /** Of the rows numbered; empty where they lie in a plane. */
  static Optional<Concentration> from(List<double[]> rows, int[] subset) {
    int p = rows.get(0).length;
    double[] mean = new double[p];
    for (int i : subset) {
      for (int j = 0; j < p; j++) {
        mean[j] += rows.get(i)[j] / subset.length;
      }
    }
    List<double[]> residuals = new ArrayList<>();
    for (int i : subset) {
      residuals.add(minus(rows.get(i), mean));
    }
    return subset.length < 2
        ? Optional.empty()
        : Cholesky.of(SymmetricMatrix.sumOfProducts(p, residuals).times(1.0 / (subset.length - 1)))
            .value()
            .map(spread -> new Concentration(subset, mean, spread));
  }

  IntStream subset() {
    return Arrays.stream(subset);
  }

  double logDeterminant() {
    return spread.logDeterminant();
  }

  double[] squaredDistances(List<double[]> rows) {
    double[] squared = new double[rows.size()];
    for (int i = 0; i < squared.length; i++) {
      squared[i] = spread.squaredDistance(minus(rows.get(i), mean));
    }
    return squared;
  }

  /** At most so many steps to the {@code half} nearest rows; empty where these lie in a plane. */
  Optional<Concentration> steps(List<double[]> rows, int half, int most) {
    Concentration here = this;
    for (int step = 0; step < most; step++) {
      int[] nearest = here.nearest(rows, half);
      if (Arrays.equals(nearest, here.subset)) {
        return Optional.of(here);
      }
      Optional<Concentration> next = from(rows, nearest);
      if (next.isEmpty()) {
        return next;
      }
      here = next.get();
    }
    return Optional.of(here);
  }

  /** In their order; of rows equally far the first. */
  private int[] nearest(List<double[]> rows, int half) {
    double[] squared = squaredDistances(rows);
    double[] sorted = squared.clone();
    Arrays.sort(sorted);
    double limit = sorted[half - 1];
    long equal = half - Arrays.stream(sorted).limit(half).filter(d -> d < limit).count();
    int[] nearest = new int[half];
    int taken = 0;
    for (int i = 0; i < squared.length; i++) {
      if (squared[i] < limit || (squared[i] == limit && equal-- > 0)) {
        nearest[taken++] = i;
      }
    }
    return nearest;
  }

  private static double[] minus(double[] a, double[] b) {
    double[] d = new double[a.length];
    for (int j = 0; j < d.length; j++) {
      d[j] = a[j] - b[j];
    }
    return d;
  }
}
