package org.comparanda.statistics.robust;

/**
 * How much too small the spread of the innermost half comes out in small samples, on average: a
 * curve 1 − e^a / n^b through simulated values.
 *
 * <p>Source: Pison, Van Aelst and Willems 2002, Metrika 55:111–123, coverage one half; coefficients
 * from memory, confirmed by the distances of an outside program (see the tests).
 */
final class SmallSampleFactor {
  private SmallSampleFactor() {}

  /** For the covariance of the innermost half. */
  static double raw(int p, int n) {
    return switch (p) {
      case 1 -> 1 / curve(0.262024211897096, 0.604756680630497, n);
      case 2 -> 1 / curve(0.673292623522027, 0.691365864961895, n);
      default ->
          1
              / manyColumns(
                  p, n, -1.42764571687802, 1.26263336932151, -1.06141115981725, 1.28907991440387);
    };
  }

  /** For the reweighted covariance. */
  static double reweighted(int p, int n) {
    return switch (p) {
      case 1 -> 1 / curve(1.11098143415027, 1.5182890270453, n);
      case 2 -> 1 / curve(3.11101712909049, 1.91401056721863, n);
      default ->
          1
              / manyColumns(
                  p, n, -1.02842572724793, 1.67659883081926, -0.26800273450853, 1.35968562893582);
    };
  }

  private static double curve(double a, double b, int n) {
    return 1 - Math.exp(a) / Math.pow(n, b);
  }

  /** The curve through the values at n = 2p² and n = 3p², themselves curves of p. */
  private static double manyColumns(
      int p, int n, double at2, double power2, double at3, double power3) {
    double y2 = Math.log(-at2 / Math.pow(p, power2));
    double y3 = Math.log(-at3 / Math.pow(p, power3));
    double x2 = -Math.log(2.0 * p * p);
    double x3 = -Math.log(3.0 * p * p);
    double b = (y3 - y2) / (x3 - x2);
    return curve(y2 - b * x2, b, n);
  }
}
