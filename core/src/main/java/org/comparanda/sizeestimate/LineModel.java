package org.comparanda.sizeestimate;

import java.util.List;
import java.util.Optional;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.LinePrediction;
import org.comparanda.taxon.TaxonName;

/** A fitted line on the scale of the fit: coefficients, and what it says elsewhere. */
interface LineModel {
  LineCoefficient intercept();

  List<LineCoefficient> slopes();

  double residualStandardError();

  int degreesOfFreedom();

  Outcome<Double> rSquared();

  /** λ of a line on a tree. */
  Outcome<Double> lambda();

  /** The line's value at x, for a bone of that taxon. */
  double at(List<Double> x, Optional<TaxonName> taxon);

  /** The line's value with both intervals, for a bone of that taxon. */
  Outcome<LinePrediction> predict(List<Double> x, Optional<TaxonName> taxon, double level);

  /** What the line fitted without each row says of that row, in row order. */
  List<Outcome<Double>> heldOutFits();
}
