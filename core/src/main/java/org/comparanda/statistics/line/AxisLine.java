package org.comparanda.statistics.line;

import org.comparanda.statistics.Outcome;

/**
 * A major axis: how two quantities go together, neither being the cause. Not a line to predict
 * with.
 *
 * @param slope slope of y on x
 * @param intercept through both means
 * @param r correlation
 * @param n rows
 * @param residualStandardError √(Σ vertical residual²/(n − 2))
 * @param slopeInterval limits of the slope; its standard error is not estimable
 */
public record AxisLine(
    double slope,
    double intercept,
    double r,
    int n,
    double residualStandardError,
    Outcome<ConfidenceInterval> slopeInterval) {
  /** The line's value at x. */
  public double at(double x) {
    return intercept + slope * x;
  }

  static AxisLine of(Moments m, double slope, Outcome<ConfidenceInterval> interval) {
    double vertical = m.varY() - 2 * slope * m.cov() + slope * slope * m.varX();
    return new AxisLine(
        slope,
        m.meanY() - slope * m.meanX(),
        m.r(),
        m.n(),
        Math.sqrt(Math.max(0, vertical) * (m.n() - 1) / (m.n() - 2)),
        interval);
  }
}
