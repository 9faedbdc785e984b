package org.comparanda.statistics.line;

import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * Standardised (reduced) major axis: slope sign(r)·sd(y)/sd(x).
 *
 * <p>Limits b·(√(B+1) ∓ √B), B = (1 − r²)/(n − 2)·F(level; 1, n − 2): Jolicoeur and Mosimann 1968,
 * as given by Warton and others 2006, Biol. Rev. 81:259-291.
 *
 * @param level level of the slope's limits
 */
public record StandardisedMajorAxis(double level) {
  /** Limits at 95 %. */
  public static StandardisedMajorAxis withDefaults() {
    return new StandardisedMajorAxis(0.95);
  }

  /** Limits at another level. */
  public StandardisedMajorAxis withLevel(double other) {
    return new StandardisedMajorAxis(other);
  }

  /** The axis of the rows, which have one predictor, or why there is none. */
  public Outcome<AxisLine> fit(Design design) {
    return AxisRows.moments(design).then(this::fit);
  }

  private Outcome<AxisLine> fit(Moments m) {
    if (m.cov() == 0) {
      return Outcome.none(
          "x and y are not correlated at all, so the axis has no direction.", "Add animals.");
    }
    double slope = Math.signum(m.cov()) * Math.sqrt(m.varY() / m.varX());
    int df = m.n() - 2;
    double b = m.unexplained() / df * Distributions.fQuantile(level, 1, df);
    double near = slope * (Math.sqrt(b + 1) - Math.sqrt(b));
    double far = slope * (Math.sqrt(b + 1) + Math.sqrt(b));
    return Outcome.of(
        AxisLine.of(
            m,
            slope,
            Outcome.of(new ConfidenceInterval(Math.min(near, far), Math.max(near, far), level))));
  }
}
