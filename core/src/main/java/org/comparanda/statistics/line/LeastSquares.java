package org.comparanda.statistics.line;

import java.util.Arrays;
import org.comparanda.statistics.Outcome;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.qr.QRColPivDecompositionHouseholderColumn_DDRM;

/**
 * Ordinary least squares, y = a + Σ bⱼxⱼ.
 *
 * <p>Columns are centred (unless the line goes through the origin) and scaled to length 1, then
 * decomposed by QR with column pivoting; the solution is refined with residuals summed in twice
 * double precision. Source: Golub and Van Loan 1996, Matrix Computations, sections 5.3 and 5.4
 * (from memory).
 */
public final class LeastSquares {
  /** Below this part of the largest pivot, a predictor says nothing that the others don't. */
  private static final double RANK_TOLERANCE = 1e-10;

  private static final int REFINEMENTS = 3;

  private final boolean centred;

  private LeastSquares(boolean centred) {
    this.centred = centred;
  }

  /** A line with an intercept. */
  public static LeastSquares withIntercept() {
    return new LeastSquares(true);
  }

  /** A line through the origin. */
  public static LeastSquares throughOrigin() {
    return new LeastSquares(false);
  }

  /** The line through these rows, or why there is none. */
  public Outcome<LeastSquaresFit> fit(Design d) {
    int n = d.rows();
    int p = d.predictors();
    int df = n - p - (centred ? 1 : 0);
    if (!d.finite()) {
      return Outcome.none(
          "A value of the line is not a finite number.",
          "Look for zero or negative values where logs are taken.");
    }
    if (df < 1) {
      return Outcome.none(
          "A line with " + p + " predictor(s) can't be fitted to " + n + " row(s).",
          "At least " + (n - df + 1) + " are needed; more give a useful interval.");
    }
    double[] centre = new double[p];
    double[] scale = new double[p];
    for (int j = 0; j < p; j++) {
      double[] column = d.column(j);
      centre[j] = centred ? CompensatedSum.mean(column) : 0;
      scale[j] = length(column, centre[j]);
      double largest = Arrays.stream(column).map(Math::abs).max().orElse(0);
      if (scale[j] <= 1e-13 * largest * Math.sqrt(n)) {
        return Outcome.none(
            "All values of predictor " + (j + 1) + " are equal.",
            "A line needs animals of different size.");
      }
    }
    DMatrixRMaj standard = new DMatrixRMaj(n, p);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < p; j++) {
        standard.set(i, j, (d.x(i, j) - centre[j]) / scale[j]);
      }
    }
    QRColPivDecompositionHouseholderColumn_DDRM qr =
        new QRColPivDecompositionHouseholderColumn_DDRM();
    if (!qr.decompose(standard.copy())) {
      return Outcome.none("The predictors can't be decomposed.", "Leave one predictor out.");
    }
    Triangle triangle = new Triangle(qr.getR(null, true), qr.getColPivots().clone());
    if (triangle.smallestPivot() < RANK_TOLERANCE) {
      return Outcome.none(
          "One predictor follows exactly from the others.", "Leave one of them out.");
    }
    return Outcome.of(solve(d, centre, scale, triangle, qr.getQ(null, true), df));
  }

  private LeastSquaresFit solve(
      Design d, double[] centre, double[] scale, Triangle triangle, DMatrixRMaj q, int df) {
    int p = d.predictors();
    double[] slopes = new double[p];
    double intercept = centred ? CompensatedSum.mean(d.response()) : 0;
    for (int j = 0; j < p; j++) {
      intercept -= slopes[j] * centre[j];
    }
    double[] residuals = residuals(d, intercept, slopes);
    for (int round = 0; round < REFINEMENTS; round++) {
      double shift = centred ? CompensatedSum.mean(residuals) : 0;
      double[] step = triangle.solve(transposeTimes(q, residuals, shift));
      intercept += shift;
      for (int j = 0; j < p; j++) {
        slopes[j] += step[j] / scale[j];
        intercept -= step[j] / scale[j] * centre[j];
      }
      residuals = residuals(d, intercept, slopes);
    }
    double sumOfSquares = Math.pow(length(residuals, 0), 2);
    double mean = centred ? CompensatedSum.mean(d.response()) : 0;
    double total = Math.pow(length(d.response(), mean), 2);
    return new LeastSquaresFit(
        centred, d.rows(), df, intercept, slopes, centre, scale, triangle, sumOfSquares, total);
  }

  private static double[] residuals(Design d, double intercept, double[] slopes) {
    double[] residuals = new double[d.rows()];
    for (int i = 0; i < residuals.length; i++) {
      CompensatedSum sum = new CompensatedSum();
      sum.add(d.y(i));
      sum.add(-intercept);
      for (int j = 0; j < slopes.length; j++) {
        sum.addProduct(-slopes[j], d.x(i, j));
      }
      residuals[i] = sum.value();
    }
    return residuals;
  }

  private static double[] transposeTimes(DMatrixRMaj q, double[] values, double shift) {
    double[] product = new double[q.numCols];
    for (int j = 0; j < product.length; j++) {
      CompensatedSum sum = new CompensatedSum();
      for (int i = 0; i < values.length; i++) {
        sum.addProduct(q.get(i, j), values[i] - shift);
      }
      product[j] = sum.value();
    }
    return product;
  }

  private static double length(double[] values, double centre) {
    CompensatedSum sum = new CompensatedSum();
    for (double value : values) {
      sum.addProduct(value - centre, value - centre);
    }
    return Math.sqrt(sum.value());
  }
}
