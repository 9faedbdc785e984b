package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Coefficient;
import org.comparanda.statistics.line.Design;
import org.comparanda.statistics.line.Diagnostics;
import org.comparanda.statistics.line.EqualSpread;
import org.comparanda.statistics.line.HeldOutCoverage;
import org.comparanda.statistics.line.LeastSquares;
import org.comparanda.statistics.line.LeastSquaresFit;
import org.comparanda.statistics.line.RobustLine;
import org.comparanda.statistics.line.ShapiroWilk;
import org.comparanda.taxon.TaxonName;

/**
 * Whether an ordinary line keeps its promises.
 *
 * @param normality of the residuals
 * @param equalSpread of the residuals along the line
 * @param coverage how often the prediction interval holds an animal left out of the line
 * @param robust what a line that trims far animals says
 * @param taxa what each taxon, left out, does to the line; empty for a line of one taxon
 */
public record LineChecks(
    Outcome<ShapiroWilk> normality,
    Outcome<EqualSpread> equalSpread,
    Outcome<HeldOutCoverage> coverage,
    Outcome<Robust> robust,
    List<TaxonLeftOut> taxa) {
  /** Starts of the robust line; any number does, this one is kept so that runs repeat. */
  private static final long SEED = 20417;

  public LineChecks {
    taxa = List.copyOf(taxa);
  }

  /** Slopes of the robust line and the animals that it sets aside. */
  public record Robust(List<Double> slopes, List<LinePoint> setAside) {
    public Robust {
      slopes = List.copyOf(slopes);
      setAside = List.copyOf(setAside);
    }
  }

  /**
   * The line without one taxon.
   *
   * @param animals points that the taxon takes with it
   * @param slopes the other taxa's slopes
   * @param percentAtMiddle by how many per cent the line then changes at the middle of its animals
   */
  public record TaxonLeftOut(
      TaxonName taxon,
      int animals,
      Outcome<List<Double>> slopes,
      Outcome<Double> percentAtMiddle) {}

  static LineChecks of(FittedLine line, Design design, LeastSquaresFit fit, double level) {
    Diagnostics diagnostics = Diagnostics.of(design, fit);
    double[] residuals =
        diagnostics.rows().stream().mapToDouble(Diagnostics.Row::residual).toArray();
    return new LineChecks(
        ShapiroWilk.test(residuals),
        EqualSpread.test(design, fit),
        HeldOutCoverage.of(diagnostics, fit.degreesOfFreedom(), level),
        RobustLine.fit(design, SEED)
            .then(
                r ->
                    Outcome.of(
                        new Robust(
                            slopes(r.fit()),
                            r.setAside().stream().map(line.points()::get).toList()))),
        leftOut(line, design, fit));
  }

  private static List<TaxonLeftOut> leftOut(FittedLine line, Design design, LeastSquaresFit fit) {
    List<TaxonLeftOut> all = new ArrayList<>();
    for (TaxonName taxon : line.taxa().size() > 1 ? line.taxa() : List.<TaxonName>of()) {
      List<Integer> rest =
          IntStream.range(0, line.n())
              .filter(i -> line.points().get(i).taxon().filter(taxon::equals).isEmpty())
              .boxed()
              .toList();
      Outcome<LeastSquaresFit> without = LeastSquares.withIntercept().fit(design.only(rest));
      List<Double> middle =
          IntStream.range(0, design.predictors())
              .mapToObj(
                  j ->
                      IntStream.range(0, line.n())
                          .mapToDouble(i -> design.x(i, j))
                          .average()
                          .orElseThrow())
              .toList();
      double whole = line.scale().back(fit.at(middle));
      all.add(
          new TaxonLeftOut(
              taxon,
              line.n() - rest.size(),
              without.then(f -> Outcome.of(slopes(f))),
              without.then(
                  f ->
                      Outcome.of(
                          100 * (line.scale().back(f.at(middle)) - whole) / Math.abs(whole)))));
    }
    return all;
  }

  private static List<Double> slopes(LeastSquaresFit fit) {
    return fit.slopes().stream().map(Coefficient::value).toList();
  }
}
