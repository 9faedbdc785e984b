package org.comparanda.statistics.line;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * Analysis of covariance: do least squares lines of groups share a slope, and if so, an intercept?
 *
 * <p>F tests of nested models: separate lines, parallel lines, one line. Source: Sokal and Rohlf
 * 1995, Biometry, chapter 14 (from memory).
 */
public record CovarianceAnalysis(FTest slopes, FTest intercepts) {
  /** An F statistic with its degrees of freedom and its chance. */
  public record FTest(double f, int df1, int df2, double p) {}

  /** The tests over these groups, each with one predictor. */
  public static Outcome<CovarianceAnalysis> of(List<Design> groups) {
    if (groups.size() < 2) {
      return Outcome.none("One group has nothing to share.", "Name at least two groups.");
    }
    Outcome<LeastSquaresFit> separate = fit(groups, Sharing.NOTHING);
    Outcome<LeastSquaresFit> parallel = fit(groups, Sharing.SLOPE);
    Outcome<LeastSquaresFit> one = fit(groups, Sharing.ALL);
    return separate.then(
        s ->
            parallel.then(
                p ->
                    one.then(o -> Outcome.of(new CovarianceAnalysis(nested(p, s), nested(o, p))))));
  }

  private enum Sharing {
    NOTHING,
    SLOPE,
    ALL
  }

  private static FTest nested(LeastSquaresFit small, LeastSquaresFit large) {
    int df1 = small.degreesOfFreedom() - large.degreesOfFreedom();
    int df2 = large.degreesOfFreedom();
    double f =
        (small.residualSumOfSquares() - large.residualSumOfSquares())
            / df1
            / (large.residualSumOfSquares() / df2);
    return new FTest(f, df1, df2, Distributions.fUpperTail(f, df1, df2));
  }

  private static Outcome<LeastSquaresFit> fit(List<Design> groups, Sharing sharing) {
    List<List<Double>> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      Design design = groups.get(g);
      double middle = CompensatedSum.mean(design.column(0));
      for (int i = 0; i < design.rows(); i++) {
        List<Double> row = new ArrayList<>(List.of(design.x(i, 0)));
        for (int other = 1; other < groups.size() && sharing != Sharing.ALL; other++) {
          row.add(other == g ? 1.0 : 0.0);
          if (sharing == Sharing.NOTHING) {
            row.add(other == g ? design.x(i, 0) - middle : 0.0);
          }
        }
        x.add(row);
        y.add(design.y(i));
      }
    }
    return LeastSquares.withIntercept().fit(Design.of(x, y));
  }
}
