package org.comparanda.statistics.line;

import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * The x that a new y speaks for, when x was the error-prone one: line fitted as y on x, read
 * backwards with Fieller's limits. The limits are the x whose prediction interval just reaches y.
 *
 * <p>Source: Fieller 1954, J. R. Stat. Soc. B 16:175-185; form after Draper and Smith 1998, section
 * 3.2 (from memory).
 *
 * @param x (y − intercept)/slope
 * @param limits where x lies
 */
public record InversePrediction(double x, ConfidenceInterval limits) {
  /** The x of one new y on a line with one predictor. */
  public static Outcome<InversePrediction> of(
      Design design, LeastSquaresFit fit, double y, double level) {
    if (design.predictors() != 1) {
      return Outcome.none(
          "A line with several predictors can't be read backwards.", "Choose one predictor.");
    }
    Moments m = Moments.of(design.column(0), design.response());
    int df = fit.degreesOfFreedom();
    double t = Distributions.tQuantile(0.5 + level / 2, df);
    double slope = fit.slope(0).value();
    double sxx = m.varX() * (m.n() - 1);
    double noise = Math.pow(t * fit.residualStandardError(), 2);
    double clear = slope * slope - noise / sxx;
    if (clear <= 0) {
      return Outcome.none(
          "The slope is not clear of zero, so y says nothing of x.",
          "Add animals of other sizes, or lower the level.");
    }
    double off = y - m.meanY();
    double reach = Math.sqrt(noise * (off * off / sxx + clear * (1 + 1.0 / m.n())));
    double low = m.meanX() + (slope * off - reach) / clear;
    double high = m.meanX() + (slope * off + reach) / clear;
    return Outcome.of(
        new InversePrediction(m.meanX() + off / slope, new ConfidenceInterval(low, high, level)));
  }
}
