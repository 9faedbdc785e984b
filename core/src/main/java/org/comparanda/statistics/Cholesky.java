package org.comparanda.statistics;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.TriangularSolver_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;

/**
 * A covariance M = D L Lᵀ D, D the standard deviations and L lower triangular: what is needed to
 * solve with M and to measure distances, without ever inverting it.
 *
 * <p>Scaling to correlations first makes the answer the same whatever the units of the columns.
 */
public final class Cholesky {
  /**
   * A column whose share of variance not explained by the columns before it is less than this adds
   * nothing but rounding errors. Double precision leaves about 1e-16.
   */
  private static final double LEAST_OWN_VARIANCE = 1e-12;

  private final int size;
  private final double[] deviations;
  private final double[] lower;

  private Cholesky(int size, double[] deviations, double[] lower) {
    this.size = size;
    this.deviations = deviations;
    this.lower = lower;
  }

  /**
   * Decomposes a covariance; not estimable if a column does not vary or repeats what the columns
   * before it say.
   */
  public static Outcome<Cholesky> of(SymmetricMatrix matrix) {
    int p = matrix.size();
    double[] deviations = new double[p];
    for (int i = 0; i < p; i++) {
      if (!(matrix.get(i, i) > 0)) {
        return Outcome.none(
            "Measurement " + (i + 1) + " of " + p + " does not vary within its groups.",
            "Leave it out, or add animals.");
      }
      deviations[i] = Math.sqrt(matrix.get(i, i));
    }
    DMatrixRMaj scaled = new DMatrixRMaj(p, p);
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < p; j++) {
        scaled.set(i, j, matrix.get(i, j) / (deviations[i] * deviations[j]));
      }
    }
    var decomposition = DecompositionFactory_DDRM.chol(p, true);
    boolean done = p == 0 || decomposition.decompose(scaled);
    DMatrixRMaj factor = done && p > 0 ? decomposition.getT(new DMatrixRMaj(p, p)) : scaled;
    for (int i = 0; i < p; i++) {
      if (!done || factor.get(i, i) * factor.get(i, i) < LEAST_OWN_VARIANCE) {
        return Outcome.none(
            "These " + p + " measurements repeat one another: one can be computed from the others.",
            "Leave one of them out.");
      }
    }
    return Outcome.of(new Cholesky(p, deviations, factor.data.clone()));
  }

  public int size() {
    return size;
  }

  /** L⁻¹ D⁻¹ v: its squared length is the squared distance vᵀ M⁻¹ v. */
  public double[] whiten(double[] v) {
    double[] z = scaledDown(v);
    TriangularSolver_DDRM.solveL(lower, z, size);
    return z;
  }

  /** M⁻¹ v. */
  public double[] solve(double[] v) {
    double[] z = whiten(v);
    TriangularSolver_DDRM.solveTranL(lower, z, size);
    return scaledDown(z);
  }

  /** vᵀ M⁻¹ v. */
  public double squaredDistance(double[] v) {
    double sum = 0;
    for (double z : whiten(v)) {
      sum += z * z;
    }
    return sum;
  }

  /** Natural log of the determinant of M. */
  public double logDeterminant() {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      sum += Math.log(deviations[i]) + Math.log(lower[i * size + i]);
    }
    return 2 * sum;
  }

  private double[] scaledDown(double[] v) {
    double[] z = new double[size];
    for (int i = 0; i < size; i++) {
      z[i] = v[i] / deviations[i];
    }
    return z;
  }
}
