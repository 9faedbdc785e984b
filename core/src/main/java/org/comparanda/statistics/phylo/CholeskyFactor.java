package org.comparanda.statistics.phylo;

import org.ejml.data.DMatrixRMaj;

/** The lower triangle L of V = L·Lᵀ. */
final class CholeskyFactor {
  private final DMatrixRMaj lower;

  CholeskyFactor(DMatrixRMaj lower) {
    this.lower = lower;
  }

  /** L⁻¹v. */
  double[] whiten(double[] v) {
    double[] white = new double[v.length];
    for (int i = 0; i < v.length; i++) {
      double rest = v[i];
      for (int j = 0; j < i; j++) {
        rest -= lower.get(i, j) * white[j];
      }
      white[i] = rest / lower.get(i, i);
    }
    return white;
  }

  /** ln det V. */
  double logDeterminant() {
    double sum = 0;
    for (int i = 0; i < lower.numRows; i++) {
      sum += 2 * Math.log(lower.get(i, i));
    }
    return sum;
  }

  /** The smallest part of a variance of V that the rows above don't explain. */
  double smallestPivot(DMatrixRMaj v) {
    double smallest = 1;
    for (int i = 0; i < lower.numRows; i++) {
      smallest = Math.min(smallest, lower.get(i, i) * lower.get(i, i) / v.get(i, i));
    }
    return smallest;
  }
}
