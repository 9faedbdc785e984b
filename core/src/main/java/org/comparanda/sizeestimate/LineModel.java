package org.comparanda.sizeestimate;

import java.util.List;
import java.util.Optional;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/** A fitted line on the scale of the fit: coefficients, and what it says elsewhere. */
interface LineModel {
  LineCoefficient intercept();

  List<LineCoefficient> slopes();

  double residualStandardError();

  int degreesOfFreedom();

  Outcome<Double> rSquared();

  /** λ, likelihood and contrasts of a line on a tree. */
  default Outcome<TreeFigures> onTree() {
    return Outcome.none("λ belongs to a line on a tree.", "Ask for a line on a tree (pgls).");
  }

  /** Where a bone of that taxon stands, for a line on a tree. */
  default Optional<TreePlace> place(Optional<TaxonName> taxon) {
    return Optional.empty();
  }

  /** The line's value at x, for a bone of that taxon. */
  double at(List<Double> x, Optional<TaxonName> taxon);

  /** The line's value with both intervals, for a bone of that taxon. */
  Outcome<Placed> predict(List<Double> x, Optional<TaxonName> taxon, double level);

  /** What the line fitted without each row says of that row, in row order. */
  List<Outcome<Double>> heldOutFits();
}
