package org.comparanda.statistics.line;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * Breusch and Pagan's test, studentised, of whether residuals spread equally along the line: n·R²
 * of the squared residuals regressed on the predictors, chi-square on as many degrees of freedom.
 *
 * <p>Source: Koenker 1981, J. Econometrics 17:107-112 (from memory).
 *
 * @param statistic n·R²
 * @param degreesOfFreedom number of predictors
 * @param p chance of so large a statistic if the spread is equal
 */
public record EqualSpread(double statistic, int degreesOfFreedom, double p) {
  /** The test on the rows that the line was fitted to. */
  public static Outcome<EqualSpread> test(Design design, LeastSquaresFit fit) {
    List<List<Double>> x = new ArrayList<>();
    List<Double> squares = new ArrayList<>();
    for (int i = 0; i < design.rows(); i++) {
      double residual = design.y(i) - fit.at(design.x(i));
      x.add(design.x(i));
      squares.add(residual * residual);
    }
    int p = design.predictors();
    return LeastSquares.withIntercept()
        .fit(Design.of(x, squares))
        .then(LeastSquaresFit::rSquared)
        .then(
            r2 -> {
              double statistic = design.rows() * Math.max(0, r2);
              return Outcome.of(
                  new EqualSpread(statistic, p, Distributions.chiSquareUpperTail(statistic, p)));
            });
  }
}
