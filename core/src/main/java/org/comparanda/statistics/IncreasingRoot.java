package org.comparanda.statistics;

import java.util.function.DoubleUnaryOperator;

/** Root of an increasing function: Newton's steps, halving wherever a step would leave. */
final class IncreasingRoot {
  private static final int STEPS = 200;

  private IncreasingRoot() {}

  /**
   * Where {@code f} crosses zero between {@code from} and {@code to}, to about 1e-15 of the greater
   * of 1 and its size; the nearer end if it does not cross.
   */
  static double find(DoubleUnaryOperator f, DoubleUnaryOperator slope, double from, double to) {
    double low = from;
    double high = to;
    double x = 0.5 * (low + high);
    for (int i = 0; i < STEPS; i++) {
      double value = f.applyAsDouble(x);
      if (value == 0) {
        return x;
      }
      if (value < 0) {
        low = x;
      } else {
        high = x;
      }
      double next = x - value / slope.applyAsDouble(x);
      if (!(next > low && next < high)) {
        next = 0.5 * (low + high);
      }
      if (Math.abs(next - x) <= 1e-15 * Math.max(1, Math.abs(x))) {
        return next;
      }
      x = next;
    }
    return x;
  }
}
