package org.comparanda.statistics.line;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * Likelihood-ratio test of whether groups share one standardised major axis slope.
 *
 * <p>LR(b) = −Σ w·ln(1 − r²(y − bx, y + bx)) over groups; the common slope minimises it with w = n,
 * and LR follows chi-square on groups − 1 degrees of freedom. The small-sample weight n − 2.5 is
 * given beside it (that factor from memory). Source: Warton and Weber 2002, Biometrical J.
 * 44:161-174.
 *
 * @param slopes each group's own slope
 * @param commonSlope the shared slope
 * @param statistic LR with w = n
 * @param p its chance if the slopes are one
 * @param smallSampleStatistic LR with w = n − 2.5
 * @param smallSampleP its chance
 * @param degreesOfFreedom groups − 1
 */
public record CommonSlope(
    List<Double> slopes,
    double commonSlope,
    double statistic,
    double p,
    double smallSampleStatistic,
    double smallSampleP,
    int degreesOfFreedom) {
  private static final int GRID = 400;

  public CommonSlope {
    slopes = List.copyOf(slopes);
  }

  /** The test over these groups, each with one predictor. */
  public static Outcome<CommonSlope> test(List<Design> groups) {
    if (groups.size() < 2) {
      return Outcome.none("One group has nothing to share.", "Name at least two groups.");
    }
    for (Design group : groups) {
      Outcome<AxisLine> own = StandardisedMajorAxis.withDefaults().fit(group);
      if (own.value().isEmpty()) {
        return own.then(line -> Outcome.none("", ""));
      }
    }
    List<Moments> moments =
        groups.stream().map(g -> Moments.of(g.column(0), g.response())).toList();
    double sign = Math.signum(moments.get(0).cov());
    if (moments.stream().anyMatch(m -> Math.signum(m.cov()) != sign)) {
      return Outcome.none(
          "The slopes of the groups run in opposite directions.", "Compare the groups one by one.");
    }
    if (moments.stream().anyMatch(m -> m.unexplained() < 1e-14)) {
      return Outcome.none(
          "The animals of a group lie on a line exactly.",
          "The slopes can be compared as they are.");
    }
    List<Double> slopes = moments.stream().map(m -> sign * Math.sqrt(m.varY() / m.varX())).toList();
    double common = sign * minimum(moments, slopes);
    double plain = ratio(moments, common, m -> m);
    double small = ratio(moments, common, n -> n - 2.5);
    int df = groups.size() - 1;
    return Outcome.of(
        new CommonSlope(
            slopes,
            common,
            plain,
            Distributions.chiSquareUpperTail(plain, df),
            small,
            Distributions.chiSquareUpperTail(small, df),
            df));
  }

  /**
   * Size of the slope where LR is smallest: the best of a grid, then the root of its derivative.
   */
  private static double minimum(List<Moments> groups, List<Double> slopes) {
    double low = slopes.stream().mapToDouble(Math::abs).min().orElseThrow();
    double high = slopes.stream().mapToDouble(Math::abs).max().orElseThrow();
    double sign = Math.signum(slopes.get(0));
    double step = Math.log(high / low) / GRID;
    if (step < 1e-15) {
      return low;
    }
    int best = 0;
    for (int i = 1; i <= GRID; i++) {
      if (ratio(groups, sign * low * Math.exp(step * i), n -> n)
          < ratio(groups, sign * low * Math.exp(step * best), n -> n)) {
        best = i;
      }
    }
    return new BrentSolver(1e-15, 1e-15)
        .solve(
            1000,
            b -> derivative(groups, b),
            low * Math.exp(step * (best - 1.5)),
            low * Math.exp(step * (best + 1.5)));
  }

  private static double ratio(List<Moments> groups, double b, DoubleUnaryOperator weight) {
    double sum = 0;
    for (Moments m : groups) {
      double total = m.varY() + b * b * m.varX();
      double unlike = m.varY() - b * b * m.varX();
      double left = (total - 2 * b * m.cov()) * (total + 2 * b * m.cov());
      sum -= weight.applyAsDouble(m.n()) * Math.log1p(-unlike * unlike / left);
    }
    return sum;
  }

  /** Derivative of LR with w = n with respect to the size of the slope. */
  private static double derivative(List<Moments> groups, double b) {
    double sum = 0;
    for (Moments m : groups) {
      double total = m.varY() + b * b * m.varX();
      double c2 = m.cov() * m.cov();
      double left = total * total - 4 * b * b * c2;
      sum -= m.n() * (2 / b - (4 * b * m.varX() * total - 8 * b * c2) / left);
    }
    return sum;
  }
}
