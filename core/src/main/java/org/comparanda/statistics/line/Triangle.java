package org.comparanda.statistics.line;

import org.ejml.data.DMatrixRMaj;

/** The upper triangle R of a QR decomposition with column pivoting: A·P = Q·R. */
final class Triangle {
  private final DMatrixRMaj r;
  private final int[] pivots;

  Triangle(DMatrixRMaj r, int[] pivots) {
    this.r = r;
    this.pivots = pivots;
  }

  int size() {
    return r.numCols;
  }

  /** Smallest diagonal element as a part of the largest. */
  double smallestPivot() {
    return Math.abs(r.get(size() - 1, size() - 1)) / Math.abs(r.get(0, 0));
  }

  /** b with R·Pᵀ·b = c. */
  double[] solve(double[] c) {
    double[] result = new double[size()];
    double[] solved = new double[size()];
    for (int i = size() - 1; i >= 0; i--) {
      double rest = c[i];
      for (int j = i + 1; j < size(); j++) {
        rest -= r.get(i, j) * solved[j];
      }
      solved[i] = rest / r.get(i, i);
      result[pivots[i]] = solved[i];
    }
    return result;
  }

  /** uᵀ(AᵀA)⁻¹v = (R⁻ᵀPᵀu)·(R⁻ᵀPᵀv). */
  double inner(double[] u, double[] v) {
    double[] a = halfway(u);
    double[] b = halfway(v);
    double sum = 0;
    for (int i = 0; i < size(); i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private double[] halfway(double[] u) {
    double[] solved = new double[size()];
    for (int i = 0; i < size(); i++) {
      double rest = u[pivots[i]];
      for (int j = 0; j < i; j++) {
        rest -= r.get(j, i) * solved[j];
      }
      solved[i] = rest / r.get(i, i);
    }
    return solved;
  }
}
