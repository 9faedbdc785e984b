package org.comparanda.sizeestimate;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.AxisLine;
import org.comparanda.statistics.line.Design;
import org.comparanda.taxon.TaxonName;

/** A major axis: for scaling questions, not made to predict. */
record AxisModel(String from, AxisLine line, List<Outcome<Double>> heldOutFits)
    implements LineModel {
  AxisModel {
    heldOutFits = List.copyOf(heldOutFits);
  }

  static Outcome<LineModel> fit(
      List<String> from, Design design, Function<Design, Outcome<AxisLine>> method) {
    return method
        .apply(design)
        .then(
            line ->
                Outcome.of(
                    new AxisModel(
                        from.get(0),
                        line,
                        IntStream.range(0, design.rows())
                            .mapToObj(i -> heldOut(design, i, method))
                            .toList())));
  }

  private static Outcome<Double> heldOut(
      Design design, int i, Function<Design, Outcome<AxisLine>> method) {
    return method.apply(design.without(i)).then(line -> Outcome.of(line.at(design.x(i, 0))));
  }

  @Override
  public LineCoefficient intercept() {
    return new LineCoefficient("intercept", line.intercept(), noStandardError(), noInterval());
  }

  @Override
  public List<LineCoefficient> slopes() {
    return List.of(
        new LineCoefficient(from, line.slope(), noStandardError(), line.slopeInterval()));
  }

  @Override
  public double residualStandardError() {
    return line.residualStandardError();
  }

  @Override
  public int degreesOfFreedom() {
    return line.n() - 2;
  }

  @Override
  public Outcome<Double> rSquared() {
    return Outcome.of(line.r() * line.r());
  }

  @Override
  public double at(List<Double> x, Optional<TaxonName> taxon) {
    return line.at(x.get(0));
  }

  @Override
  public Outcome<Placed> predict(List<Double> x, Optional<TaxonName> taxon, double level) {
    return Outcome.none(
        "A major axis gives no prediction interval.", "Ask for ols to predict with an interval.");
  }

  private static <T> Outcome<T> noInterval() {
    return Outcome.none(
        "Limits of a major axis's intercept are not estimable.", "Use the limits of the slope.");
  }

  private static Outcome<Double> noStandardError() {
    return Outcome.none("A major axis has no standard error.", "Use the limits of the slope.");
  }
}
