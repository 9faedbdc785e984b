package org.comparanda.statistics.line;

import java.util.function.DoubleUnaryOperator;

/**
 * Where a parameter or the mean of y at some x lies. Never the range of a single new animal: that
 * is a {@link PredictionInterval}.
 */
public record ConfidenceInterval(double lower, double upper, double level) {
  /** Both limits through one rising function, for example exp. */
  public ConfidenceInterval through(DoubleUnaryOperator rising) {
    return new ConfidenceInterval(rising.applyAsDouble(lower), rising.applyAsDouble(upper), level);
  }
}
