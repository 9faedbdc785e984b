package org.comparanda.statistics.line;

import java.util.Arrays;
import java.util.List;

/**
 * Rows to which a line is fitted: n rows, p predictors, one response. Immutable.
 *
 * <p>Errors: {@link IllegalArgumentException} if rows differ in length or there is none.
 */
public final class Design {
  private final double[][] x;
  private final double[] y;

  private Design(double[][] x, double[] y) {
    if (x.length != y.length || x.length == 0) {
      throw new IllegalArgumentException(
          "As many x as y are needed, at least one: " + x.length + ", " + y.length);
    }
    if (Arrays.stream(x).anyMatch(row -> row.length != x[0].length || row.length == 0)) {
      throw new IllegalArgumentException("Every row needs the same predictors, at least one.");
    }
    this.x = x;
    this.y = y;
  }

  /** One predictor. */
  public static Design of(double[] x, double[] y) {
    return new Design(
        Arrays.stream(x).mapToObj(v -> new double[] {v}).toArray(double[][]::new), y.clone());
  }

  /** Several predictors: x holds one list per row. */
  public static Design of(List<List<Double>> x, List<Double> y) {
    return new Design(x.stream().map(Design::array).toArray(double[][]::new), array(y));
  }

  /** Number of rows. */
  public int rows() {
    return y.length;
  }

  /** Number of predictors. */
  public int predictors() {
    return x[0].length;
  }

  /** Predictor j of row i. */
  public double x(int i, int j) {
    return x[i][j];
  }

  /** Response of row i. */
  public double y(int i) {
    return y[i];
  }

  /** All predictors of row i. */
  public List<Double> x(int i) {
    return Arrays.stream(x[i]).boxed().toList();
  }

  /** A copy of predictor j. */
  public double[] column(int j) {
    return Arrays.stream(x).mapToDouble(row -> row[j]).toArray();
  }

  /** A copy of the response. */
  public double[] response() {
    return y.clone();
  }

  /** The same rows without row i. */
  public Design without(int i) {
    double[][] rest = new double[x.length - 1][];
    double[] restY = new double[y.length - 1];
    for (int from = 0, to = 0; from < x.length; from++) {
      if (from != i) {
        rest[to] = x[from];
        restY[to++] = y[from];
      }
    }
    return new Design(rest, restY);
  }

  /** Only these rows, in this order. */
  public Design only(List<Integer> rows) {
    return new Design(
        rows.stream().map(i -> x[i]).toArray(double[][]::new),
        rows.stream().mapToDouble(i -> y[i]).toArray());
  }

  /** Whether every number is finite. */
  boolean finite() {
    return Arrays.stream(y).allMatch(Double::isFinite)
        && Arrays.stream(x).flatMapToDouble(Arrays::stream).allMatch(Double::isFinite);
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
