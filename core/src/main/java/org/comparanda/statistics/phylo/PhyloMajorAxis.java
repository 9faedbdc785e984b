package org.comparanda.statistics.phylo;

import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Design;

/**
 * Standardised major axis between taxa on a tree under Brownian motion: both columns centred on
 * their root values, slope sign(c)·√(v_y/v_x) of what V⁻¹ leaves.
 *
 * <p>Source: Revell 2012, Methods Ecol. Evol. 3:217-223 (from memory).
 *
 * @param slope slope of y on x
 * @param intercept through both root values
 * @param rSquared squared correlation on the tree
 */
public record PhyloMajorAxis(double slope, double intercept, double rSquared) {
  /** The axis through these taxon means, one predictor, rows in the order of the tips. */
  public static Outcome<PhyloMajorAxis> of(TipCovariance tips, Design means) {
    Design swapped = Design.of(means.response(), means.column(0));
    Outcome<PhyloFit> yOnX = PhyloLeastSquares.brownian().fit(tips, means);
    return yOnX.then(
        forth -> PhyloLeastSquares.brownian().fit(tips, swapped).then(back -> axis(forth, back)));
  }

  private static Outcome<PhyloMajorAxis> axis(PhyloFit forth, PhyloFit back) {
    double a = forth.slope(0).value();
    double b = back.slope(0).value();
    if (!(a * b > 0)) {
      return Outcome.none(
          "x and y are not correlated at all, so the axis has no direction.", "Add taxa.");
    }
    double slope = Math.signum(a) * Math.sqrt(a / b);
    double rootX = back.at(java.util.List.of(0.0));
    double rootY = forth.at(java.util.List.of(0.0));
    // Both lines pass through the root values: x = rootX + b·y, y = rootY + a·x.
    double x = (rootX + b * rootY) / (1 - a * b);
    double y = rootY + a * x;
    return Outcome.of(new PhyloMajorAxis(slope, y - slope * x, a * b));
  }
}
