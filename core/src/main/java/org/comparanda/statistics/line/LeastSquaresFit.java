package org.comparanda.statistics.line;

import java.util.List;
import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;

/**
 * A fitted ordinary least squares line. Keeps coefficients and what intervals need, not the rows.
 *
 * <p>Source of the intervals: s·√(1/n + (x − x̄)²/Sxx) for the mean, with 1 + … for one new row
 * (Draper and Smith 1998, Applied Regression Analysis, chapter 3, from memory).
 */
public final class LeastSquaresFit {
  private final boolean centred;
  private final int n;
  private final int df;
  private final double intercept;
  private final double[] slopes;
  private final double[] centre;
  private final double[] scale;
  private final Triangle triangle;
  private final double residualSumOfSquares;
  private final double totalSumOfSquares;

  LeastSquaresFit(
      boolean centred,
      int n,
      int df,
      double intercept,
      double[] slopes,
      double[] centre,
      double[] scale,
      Triangle triangle,
      double residualSumOfSquares,
      double totalSumOfSquares) {
    this.centred = centred;
    this.n = n;
    this.df = df;
    this.intercept = intercept;
    this.slopes = slopes.clone();
    this.centre = centre.clone();
    this.scale = scale.clone();
    this.triangle = triangle;
    this.residualSumOfSquares = residualSumOfSquares;
    this.totalSumOfSquares = totalSumOfSquares;
  }

  /** Rows fitted. */
  public int n() {
    return n;
  }

  /** Number of coefficients. */
  public int coefficients() {
    return n - df;
  }

  /** n minus the number of coefficients. */
  public int degreesOfFreedom() {
    return df;
  }

  /** Sum of squared residuals. */
  public double residualSumOfSquares() {
    return residualSumOfSquares;
  }

  /** √(residual sum of squares / degrees of freedom). */
  public double residualStandardError() {
    return Math.sqrt(residualSumOfSquares / df);
  }

  /** 1 − residual over total sum of squares; the total is not centred for a line through 0. */
  public Outcome<Double> rSquared() {
    return totalSumOfSquares > 0
        ? Outcome.of(1 - residualSumOfSquares / totalSumOfSquares)
        : Outcome.none("All values of y are equal.", "A line needs animals of different size.");
  }

  /** The intercept; 0 with standard error 0 for a line through the origin. */
  public Coefficient intercept() {
    double error =
        centred ? residualStandardError() * Math.sqrt(leverage(new double[slopes.length])) : 0;
    return new Coefficient(intercept, error, df);
  }

  /** The slopes in the order of the predictors. */
  public List<Coefficient> slopes() {
    return IntStream.range(0, slopes.length).mapToObj(this::slope).toList();
  }

  /** The slope of predictor j. */
  public Coefficient slope(int j) {
    double[] unit = new double[slopes.length];
    unit[j] = 1 / scale[j];
    double error = residualStandardError() * Math.sqrt(triangle.inner(unit, unit));
    return new Coefficient(slopes[j], error, df);
  }

  /** The line's value at x. */
  public double at(List<Double> x) {
    return at(array(x));
  }

  /** How far x lies from the middle of the rows; the mean over the rows is coefficients / n. */
  public double leverage(List<Double> x) {
    return leverage(array(x));
  }

  /** Value and both intervals at x. */
  public LinePrediction predict(List<Double> x, double level) {
    double variance = residualSumOfSquares / df;
    double error = Math.sqrt(variance * leverage(array(x)));
    return LinePrediction.of(at(x), error, variance, df, level);
  }

  private double at(double[] x) {
    CompensatedSum sum = new CompensatedSum();
    sum.add(intercept);
    for (int j = 0; j < slopes.length; j++) {
      sum.addProduct(slopes[j], x[j]);
    }
    return sum.value();
  }

  private double leverage(double[] x) {
    double[] standard = new double[x.length];
    for (int j = 0; j < x.length; j++) {
      standard[j] = (x[j] - centre[j]) / scale[j];
    }
    return (centred ? 1.0 / n : 0) + triangle.inner(standard, standard);
  }

  private double[] array(List<Double> x) {
    if (x.size() != slopes.length) {
      throw new IllegalArgumentException(
          "The line has " + slopes.length + " predictors, got " + x.size());
    }
    return x.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
