package org.comparanda.statistics.line;

/**
 * A sum in about twice double precision, so that certified regressions keep their digits.
 *
 * <p>Source: Ogita, Rump and Oishi 2005, SIAM J. Sci. Comput. 26:1955-1988 (TwoSum, TwoProduct by
 * fused multiply-add).
 */
final class CompensatedSum {
  private double high;
  private double low;

  /** Adds one number. */
  void add(double value) {
    double sum = high + value;
    double part = sum - high;
    low += (high - (sum - part)) + (value - part);
    high = sum;
  }

  /** Adds a product, with its rounding error. */
  void addProduct(double a, double b) {
    double product = a * b;
    add(product);
    low += Math.fma(a, b, -product);
  }

  double value() {
    return high + low;
  }

  static double mean(double[] values) {
    CompensatedSum sum = new CompensatedSum();
    for (double value : values) {
      sum.add(value);
    }
    return sum.value() / values.length;
  }
}
