package org.comparanda.statistics.line;

import java.util.List;
import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;

/**
 * How each row sits on a least squares line, and how the line does on rows held out.
 *
 * @param rows one per row of the design, in its order
 */
public record Diagnostics(List<Row> rows) {
  public Diagnostics {
    rows = List.copyOf(rows);
  }

  /**
   * One row. With e the residual, h the leverage, s the residual standard error, k the number of
   * coefficients: standardised e/(s√(1−h)), studentised e/(s₋ᵢ√(1−h)), Cook's distance
   * standardised²·h/(k(1−h)), held-out fit y − e/(1−h).
   *
   * <p>Source: Cook and Weisberg 1982, Residuals and Influence in Regression (from memory).
   */
  public record Row(
      double fitted,
      double residual,
      double leverage,
      Outcome<Double> standardised,
      Outcome<Double> studentised,
      Outcome<Double> cooksDistance,
      Outcome<Double> heldOutFit) {}

  /** Diagnostics of the rows that the line was fitted to. */
  public static Diagnostics of(Design design, LeastSquaresFit fit) {
    return new Diagnostics(
        IntStream.range(0, design.rows()).mapToObj(i -> row(design, fit, i)).toList());
  }

  /** Sum of squared held-out residuals; none where one row alone holds the line. */
  public Outcome<Double> press() {
    double sum = 0;
    for (Row row : rows) {
      if (row.heldOutFit().value().isEmpty()) {
        return Outcome.none(
            "One animal alone decides the slope, so the line can't be tried without it.",
            "Add animals of other sizes.");
      }
      double held = row.fitted() + row.residual() - row.heldOutFit().value().orElseThrow();
      sum += held * held;
    }
    return Outcome.of(sum);
  }

  /** √(PRESS / n), on the scale of the fit. */
  public Outcome<Double> pressRootMeanSquare() {
    return press().then(sum -> Outcome.of(Math.sqrt(sum / rows.size())));
  }

  private static Row row(Design design, LeastSquaresFit fit, int i) {
    double fitted = fit.at(design.x(i));
    double e = design.y(i) - fitted;
    double h = fit.leverage(design.x(i));
    if (1 - h < 1e-12) {
      return new Row(fitted, e, h, alone(), alone(), alone(), alone());
    }
    double s = fit.residualStandardError();
    double standardised = e / (s * Math.sqrt(1 - h));
    double without = fit.residualSumOfSquares() - e * e / (1 - h);
    int df = fit.degreesOfFreedom() - 1;
    return new Row(
        fitted,
        e,
        h,
        finite(standardised),
        df < 1 ? alone() : finite(e / Math.sqrt(Math.max(0, without) / df * (1 - h))),
        finite(standardised * standardised * h / (fit.coefficients() * (1 - h))),
        Outcome.of(design.y(i) - e / (1 - h)));
  }

  private static Outcome<Double> finite(double value) {
    return Double.isFinite(value)
        ? Outcome.of(value)
        : Outcome.none("The line passes through every other animal exactly.", "Add animals.");
  }

  private static Outcome<Double> alone() {
    return Outcome.none("The line hangs on this animal.", "Add animals of other sizes.");
  }
}
