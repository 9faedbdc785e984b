package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.SymmetricMatrix;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;

/**
 * Takes one direction of size out of logs of measurements: p columns become p − 1 orthonormal ones
 * at right angles to it. Which basis is taken does not matter to any D².
 *
 * <p>Proportions: the direction in which all logs grow alike (Mosimann 1970, J. Am. Stat. Assoc.
 * 65:930–945). Size-adjusted: the longest axis of the pooled spread within groups, so that what
 * growth changes in shape goes out, too (Burnaby 1966, Biometrics 22:96–110).
 */
public final class WithoutSize {
  private final Axes axes;

  private WithoutSize(double[] direction) {
    this.axes = new Axes(rightAngled(direction));
  }

  /** Proportions of p measurements; not estimable below 3. */
  public static Outcome<WithoutSize> proportions(int columns) {
    double[] alike = new double[columns];
    Arrays.fill(alike, 1 / Math.sqrt(columns));
    return ofDirection(alike);
  }

  /** What is left when the size direction within groups is taken out. */
  public static Outcome<WithoutSize> adjusted(GroupMoments moments) {
    return moments.pooledCovariance().then(w -> ofDirection(longestAxis(w)));
  }

  private static Outcome<WithoutSize> ofDirection(double[] direction) {
    return direction.length < 3
        ? Outcome.none(
            "Proportions need three measurements, here are " + direction.length + ".",
            "Measure more.")
        : Outcome.of(new WithoutSize(direction));
  }

  /** One row without its size. */
  public double[] row(double... values) {
    return axes.row(values);
  }

  /** Rows and their side pairs without size. */
  public GroupedRows rows(GroupedRows rows) {
    return rows.mapped(axes.count(), this::row);
  }

  /** Moments as those of the rows without size would be. */
  public GroupMoments moments(GroupMoments moments) {
    return axes.moments(moments);
  }

  private static double[] longestAxis(SymmetricMatrix w) {
    int p = w.size();
    DMatrixRMaj dense = new DMatrixRMaj(p, p);
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < p; j++) {
        dense.set(i, j, w.get(i, j));
      }
    }
    var eigen = DecompositionFactory_DDRM.eig(p, true, true);
    if (!eigen.decompose(dense)) {
      throw new ArithmeticException("No axes found for a covariance of finite numbers");
    }
    int longest = 0;
    for (int i = 1; i < p; i++) {
      longest =
          eigen.getEigenvalue(i).getReal() > eigen.getEigenvalue(longest).getReal() ? i : longest;
    }
    return eigen.getEigenVector(longest).data.clone();
  }

  /** Rows 2 to p of the Householder reflection that takes the direction to the first axis. */
  private static List<double[]> rightAngled(double[] direction) {
    double[] u = direction.clone();
    u[0] += Math.copySign(1, u[0]);
    double length = 0;
    for (double value : u) {
      length += value * value;
    }
    List<double[]> basis = new ArrayList<>();
    for (int i = 1; i < u.length; i++) {
      double[] axis = new double[u.length];
      for (int j = 0; j < u.length; j++) {
        axis[j] = (i == j ? 1 : 0) - 2 * u[i] * u[j] / length;
      }
      basis.add(axis);
    }
    return basis;
  }
}
