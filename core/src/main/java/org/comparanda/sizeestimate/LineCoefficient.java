package org.comparanda.sizeestimate;

import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Coefficient;
import org.comparanda.statistics.line.ConfidenceInterval;

/**
 * Intercept or slope of a size line, on the scale of the fit.
 *
 * @param of the predictor, as asked; {@code intercept} for the intercept
 * @param value the coefficient
 * @param standardError not estimable for the major axes
 * @param interval95 where the true coefficient lies, 95 %
 */
public record LineCoefficient(
    String of,
    double value,
    Outcome<Double> standardError,
    Outcome<ConfidenceInterval> interval95) {
  static LineCoefficient of(String of, Coefficient fitted) {
    return new LineCoefficient(
        of, fitted.value(), Outcome.of(fitted.standardError()), Outcome.of(fitted.interval(0.95)));
  }
}
