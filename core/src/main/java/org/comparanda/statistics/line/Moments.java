package org.comparanda.statistics.line;

/** Means, variances (divisor n − 1) and covariance of two columns. */
record Moments(int n, double meanX, double meanY, double varX, double varY, double cov) {
  static Moments of(double[] x, double[] y) {
    double meanX = CompensatedSum.mean(x);
    double meanY = CompensatedSum.mean(y);
    CompensatedSum xx = new CompensatedSum();
    CompensatedSum yy = new CompensatedSum();
    CompensatedSum xy = new CompensatedSum();
    for (int i = 0; i < x.length; i++) {
      xx.addProduct(x[i] - meanX, x[i] - meanX);
      yy.addProduct(y[i] - meanY, y[i] - meanY);
      xy.addProduct(x[i] - meanX, y[i] - meanY);
    }
    double df = x.length - 1.0;
    return new Moments(x.length, meanX, meanY, xx.value() / df, yy.value() / df, xy.value() / df);
  }

  double r() {
    return cov / Math.sqrt(varX * varY);
  }

  /** 1 − r². */
  double unexplained() {
    double c = cov / Math.sqrt(varX) / Math.sqrt(varY);
    return Math.max(0, (1 - c) * (1 + c));
  }

  /** Whether a column does not vary beyond rounding. */
  boolean flat() {
    return flat(varX, meanX) || flat(varY, meanY);
  }

  private static boolean flat(double variance, double mean) {
    return Math.sqrt(variance) <= 1e-13 * Math.abs(mean) || variance == 0;
  }
}
