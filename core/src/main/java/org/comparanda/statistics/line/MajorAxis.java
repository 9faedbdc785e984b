package org.comparanda.statistics.line;

import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * Ordinary major axis: the first principal axis of x and y.
 *
 * <p>Limits tan(atan(b) ∓ ½·asin(2√H)), H = F(level; 1, n − 2)/(n − 2)/(l₁/l₂ + l₂/l₁ − 2), l the
 * eigenvalues of the covariance: Jolicoeur 1968, as given by Warton and others 2006, Biol. Rev.
 * 81:259-291.
 *
 * @param level level of the slope's limits
 */
public record MajorAxis(double level) {
  /** Limits at 95 %. */
  public static MajorAxis withDefaults() {
    return new MajorAxis(0.95);
  }

  /** Limits at another level. */
  public MajorAxis withLevel(double other) {
    return new MajorAxis(other);
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
    double half = (m.varY() - m.varX()) / 2;
    double root = Math.hypot(half, m.cov());
    double slope = half >= 0 ? (half + root) / m.cov() : m.cov() / (root - half);
    return Outcome.of(AxisLine.of(m, slope, interval(m, slope, root)));
  }

  private Outcome<ConfidenceInterval> interval(Moments m, double slope, double root) {
    double large = (m.varX() + m.varY()) / 2 + root;
    double small = m.varX() * m.varY() * m.unexplained() / large;
    int df = m.n() - 2;
    double h =
        small == 0
            ? 0
            : Distributions.fQuantile(level, 1, df) / df / (large / small + small / large - 2);
    double turn = 4 * h < 1 ? 0.5 * Math.asin(2 * Math.sqrt(h)) : Math.PI;
    if (Math.abs(Math.atan(slope)) + turn >= Math.PI / 2) {
      return Outcome.none(
          "The limits of the major axis pass the vertical: its direction is not known.",
          "Add animals, or use the standardised major axis.");
    }
    return Outcome.of(
        new ConfidenceInterval(
            Math.tan(Math.atan(slope) - turn), Math.tan(Math.atan(slope) + turn), level));
  }
}
