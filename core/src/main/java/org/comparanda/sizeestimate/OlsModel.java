package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Design;
import org.comparanda.statistics.line.Diagnostics;
import org.comparanda.statistics.line.LeastSquares;
import org.comparanda.statistics.line.LeastSquaresFit;
import org.comparanda.taxon.TaxonName;

/** Ordinary least squares: the line to predict with. */
record OlsModel(List<String> from, LeastSquaresFit fit, Diagnostics diagnostics)
    implements LineModel {
  OlsModel {
    from = List.copyOf(from);
  }

  static Outcome<LineModel> fit(List<String> from, Design design) {
    return LeastSquares.withIntercept()
        .fit(design)
        .then(fit -> Outcome.of(new OlsModel(from, fit, Diagnostics.of(design, fit))));
  }

  @Override
  public LineCoefficient intercept() {
    return LineCoefficient.of("intercept", fit.intercept());
  }

  @Override
  public List<LineCoefficient> slopes() {
    List<LineCoefficient> slopes = new ArrayList<>();
    for (int j = 0; j < from.size(); j++) {
      slopes.add(LineCoefficient.of(from.get(j), fit.slope(j)));
    }
    return slopes;
  }

  @Override
  public double residualStandardError() {
    return fit.residualStandardError();
  }

  @Override
  public int degreesOfFreedom() {
    return fit.degreesOfFreedom();
  }

  @Override
  public Outcome<Double> rSquared() {
    return fit.rSquared();
  }

  @Override
  public double at(List<Double> x, Optional<TaxonName> taxon) {
    return fit.at(x);
  }

  @Override
  public Outcome<Placed> predict(List<Double> x, Optional<TaxonName> taxon, double level) {
    return Outcome.of(Placed.of(fit.predict(x, level)));
  }

  @Override
  public List<Outcome<Double>> heldOutFits() {
    return diagnostics.rows().stream().map(Diagnostics.Row::heldOutFit).toList();
  }
}
