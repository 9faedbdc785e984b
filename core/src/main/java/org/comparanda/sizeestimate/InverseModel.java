package org.comparanda.sizeestimate;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.ConfidenceInterval;
import org.comparanda.statistics.line.Design;
import org.comparanda.statistics.line.InversePrediction;
import org.comparanda.statistics.line.LeastSquares;
import org.comparanda.statistics.line.LeastSquaresFit;
import org.comparanda.statistics.line.PredictionInterval;
import org.comparanda.taxon.TaxonName;

/**
 * A line fitted the other way round, the bone on what is wanted, and read backwards with Fieller's
 * limits: for a bone that is the error-prone one. Coefficients are those of the line as fitted.
 */
record InverseModel(String predict, Design turned, LeastSquaresFit fit) implements LineModel {
  static Outcome<LineModel> fit(String predict, Design design) {
    if (design.predictors() != 1) {
      return Outcome.none(
          "A line with several predictors can't be read backwards.", "Choose one predictor.");
    }
    Design turned = Design.of(design.response(), design.column(0));
    return LeastSquares.withIntercept()
        .fit(turned)
        .then(fit -> Outcome.of(new InverseModel(predict, turned, fit)));
  }

  @Override
  public LineCoefficient intercept() {
    return LineCoefficient.of("intercept", fit.intercept());
  }

  @Override
  public List<LineCoefficient> slopes() {
    return List.of(LineCoefficient.of(predict, fit.slope(0)));
  }

  /** Of the bone around the line. */
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
    return backwards(fit, x.get(0));
  }

  @Override
  public Outcome<Placed> predict(List<Double> x, Optional<TaxonName> taxon, double level) {
    return InversePrediction.of(turned, fit, x.get(0), level)
        .then(
            back ->
                Outcome.of(
                    new Placed(
                        back.x(),
                        Outcome.none(
                            "A line read backwards has no standard error.",
                            "Use Fieller's limits."),
                        Outcome.none(
                            "A line read backwards has no interval of the mean.",
                            "Use Fieller's limits, or ask for ols."),
                        Outcome.of(fieller(back.limits())))));
  }

  @Override
  public List<Outcome<Double>> heldOutFits() {
    return IntStream.range(0, turned.rows())
        .mapToObj(
            i ->
                LeastSquares.withIntercept()
                    .fit(turned.without(i))
                    .then(other -> Outcome.of(backwards(other, turned.y(i)))))
        .toList();
  }

  private static PredictionInterval fieller(ConfidenceInterval limits) {
    return new PredictionInterval(limits.lower(), limits.upper(), limits.level());
  }

  private static double backwards(LeastSquaresFit fit, double bone) {
    return (bone - fit.intercept().value()) / fit.slope(0).value();
  }
}
