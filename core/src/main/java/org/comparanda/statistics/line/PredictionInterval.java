package org.comparanda.statistics.line;

import java.util.function.DoubleUnaryOperator;

/**
 * Where one new animal is expected. Always wider than the {@link ConfidenceInterval} of the mean.
 */
public record PredictionInterval(double lower, double upper, double level) {
  /** Both limits through one rising function, for example exp. */
  public PredictionInterval through(DoubleUnaryOperator rising) {
    return new PredictionInterval(rising.applyAsDouble(lower), rising.applyAsDouble(upper), level);
  }
}
