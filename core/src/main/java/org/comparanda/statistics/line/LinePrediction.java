package org.comparanda.statistics.line;

import org.comparanda.statistics.Distributions;

/**
 * What a line says at one x, on the scale of the fit.
 *
 * @param fit the line's value
 * @param standardErrorOfMean standard error of that value
 * @param standardErrorOfNew standard error for one new animal, √(residual variance + its square)
 * @param degreesOfFreedom of the t distribution behind both intervals
 * @param confidence where the mean lies
 * @param prediction where one new animal is expected
 */
public record LinePrediction(
    double fit,
    double standardErrorOfMean,
    double standardErrorOfNew,
    int degreesOfFreedom,
    ConfidenceInterval confidence,
    PredictionInterval prediction) {
  /** Both intervals from t on the degrees of freedom. */
  public static LinePrediction of(
      double fit, double standardErrorOfMean, double residualVariance, int df, double level) {
    double t = Distributions.tQuantile(0.5 + level / 2, df);
    double seNew = Math.sqrt(residualVariance + standardErrorOfMean * standardErrorOfMean);
    return new LinePrediction(
        fit,
        standardErrorOfMean,
        seNew,
        df,
        new ConfidenceInterval(fit - t * standardErrorOfMean, fit + t * standardErrorOfMean, level),
        new PredictionInterval(fit - t * seNew, fit + t * seNew, level));
  }
}
