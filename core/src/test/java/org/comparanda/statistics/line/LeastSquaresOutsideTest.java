package org.comparanda.statistics.line;

import java.util.Arrays;
import java.util.List;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.junit.jupiter.api.Test;

/** 1e-8 relative: the outside values carry 17 digits; the rest is order of summation. */
class LeastSquaresOutsideTest {
  private static final double RELATIVE = 1e-8;

  @Test
  void coefficientsErrorsAndHeldOutErrorAgreeWithR() {
    var check =
        OutsideCheck.named(
            "lines-ols-fit", "R 4.2.2 lm(y ~ x), summary.lm, confint; expected/a_ols_fit.csv");
    for (OutsideTable.Row row : OutsideTable.read("expected/a_ols_fit.csv").rows()) {
      String at = row.text("set") + " " + row.text("scale") + " ";
      Design design = OlsSet.named(row.text("set")).design(row.text("scale"));
      LeastSquaresFit fit = OlsSet.named(row.text("set")).fit(row.text("scale"));
      Coefficient slope = fit.slope(0);
      Coefficient intercept = fit.intercept();
      double press = Diagnostics.of(design, fit).press().value().orElseThrow();
      check.exact(at + "n", row.count("n"), fit.n());
      check.exact(at + "df", row.count("df"), fit.degreesOfFreedom());
      check.relative(at + "slope", row.number("slope"), slope.value(), RELATIVE);
      check.relative(at + "intercept", row.number("intercept"), intercept.value(), RELATIVE);
      check.relative(at + "se slope", row.number("se_slope"), slope.standardError(), RELATIVE);
      check.relative(
          at + "se intercept", row.number("se_intercept"), intercept.standardError(), RELATIVE);
      check.relative(at + "s", row.number("residual_se"), fit.residualStandardError(), RELATIVE);
      check.relative(
          at + "r2", row.number("r_squared"), fit.rSquared().value().orElseThrow(), RELATIVE);
      check.relative(at + "p", row.number("p_slope"), slope.p(), RELATIVE);
      check.relative(
          at + "slope lo", row.number("slope_lo95"), slope.interval(0.95).lower(), RELATIVE);
      check.relative(
          at + "slope hi", row.number("slope_hi95"), slope.interval(0.95).upper(), RELATIVE);
      check.relative(
          at + "intercept lo",
          row.number("intercept_lo95"),
          intercept.interval(0.95).lower(),
          RELATIVE);
      check.relative(
          at + "intercept hi",
          row.number("intercept_hi95"),
          intercept.interval(0.95).upper(),
          RELATIVE);
      check.relative(at + "PRESS", row.number("PRESS"), press, RELATIVE);
      check.relative(
          at + "loo rmse",
          row.number("loo_rmse"),
          Diagnostics.of(design, fit).pressRootMeanSquare().value().orElseThrow(),
          RELATIVE);
    }
  }

  @Test
  void intervalsInsideAndOutsideTheRangeAgreeWithR() {
    var check =
        OutsideCheck.named(
            "lines-ols-intervals",
            "R 4.2.2 predict.lm(interval='confidence'|'prediction'); expected/a_ols_intervals.csv");
    for (OutsideTable.Row row : OutsideTable.read("expected/a_ols_intervals.csv").rows()) {
      String scale = row.text("scale");
      String at = row.text("set") + " " + scale + " x0 " + row.text("x0") + " ";
      LinePrediction p =
          OlsSet.named(row.text("set"))
              .fit(scale)
              .predict(List.of(OlsSet.forward(scale, row.number("x0"))), row.number("level"));
      check.relative(at + "fit", row.number("fit"), p.fit(), RELATIVE);
      check.relative(at + "se mean", row.number("se_fit"), p.standardErrorOfMean(), RELATIVE);
      check.relative(at + "se new", row.number("se_pred"), p.standardErrorOfNew(), RELATIVE);
      check.relative(at + "ci lo", row.number("ci_lo"), p.confidence().lower(), RELATIVE);
      check.relative(at + "ci hi", row.number("ci_hi"), p.confidence().upper(), RELATIVE);
      check.relative(at + "pi lo", row.number("pi_lo"), p.prediction().lower(), RELATIVE);
      check.relative(at + "pi hi", row.number("pi_hi"), p.prediction().upper(), RELATIVE);
      var back = OlsSet.antilog(scale);
      check.relative(
          at + "bt pi lo", row.number("bt_pi_lo"), p.prediction().through(back).lower(), RELATIVE);
      check.relative(
          at + "bt ci hi", row.number("bt_ci_hi"), p.confidence().through(back).upper(), RELATIVE);
    }
  }

  @Test
  void backTransformFactorsAndPercentErrorsAgreeWithR() {
    var check =
        OutsideCheck.named(
            "lines-back-transform",
            "R 4.2.2, formulas in the first line of expected/a_ols_backtransform.csv");
    for (OutsideTable.Row row : OutsideTable.read("expected/a_ols_backtransform.csv").rows()) {
      String scale = row.text("scale");
      String at = row.text("set") + " " + scale + " ";
      OlsSet set = OlsSet.named(row.text("set"));
      LeastSquaresFit fit = set.fit(scale);
      Design design = set.design(scale);
      double[] fitted = fitted(design, fit);
      var antilog = OlsSet.antilog(scale);
      BackTransform factors =
          BackTransform.of(
              set.rawY(),
              fitted,
              fit.residualStandardError(),
              antilog,
              scale.equals("ln") ? 1 : Math.log(10));
      check.relative(at + "naive", row.number("cf_naive"), factors.naive(), 0);
      check.relative(
          at + "lognormal", row.number("cf_half_variance"), factors.lognormal(), RELATIVE);
      check.relative(at + "smearing", row.number("cf_smearing"), factors.smearing(), RELATIVE);
      check.relative(at + "ratio", row.number("cf_ratio"), factors.ratio(), RELATIVE);
      PercentError error =
          PercentError.of(set.rawY(), Arrays.stream(fitted).map(antilog).toArray());
      check.relative(
          at + "mean abs PE", row.number("mean_abs_PE_naive"), error.meanAbsolute(), RELATIVE);
      check.relative(at + "mean PE", row.number("mean_PE_naive"), error.mean(), RELATIVE);
      check.relative(
          at + "median abs PE",
          row.number("median_abs_PE_naive"),
          error.medianAbsolute(),
          RELATIVE);
      double[] heldOut =
          Diagnostics.of(design, fit).rows().stream()
              .mapToDouble(r -> antilog.applyAsDouble(r.heldOutFit().value().orElseThrow()))
              .toArray();
      check.relative(
          at + "mean abs PE loo",
          row.number("mean_abs_PE_loo"),
          PercentError.of(set.rawY(), heldOut).meanAbsolute(),
          RELATIVE);
      double s = fit.residualStandardError();
      check.relative(
          at + "SEE up",
          row.number("SEE_percent_up"),
          100 * (antilog.applyAsDouble(s) - 1),
          RELATIVE);
    }
  }

  @Test
  void rowDiagnosticsAgreeWithR() {
    var check =
        OutsideCheck.named(
            "lines-ols-rows",
            "R 4.2.2 hatvalues, rstandard, rstudent, cooks.distance; expected/a_ols_rows.csv");
    List<OutsideTable.Row> rows = OutsideTable.read("expected/a_ols_rows.csv").rows();
    String here = "";
    int i = 0;
    Diagnostics diagnostics = new Diagnostics(List.of());
    for (OutsideTable.Row row : rows) {
      String at = row.text("set") + " " + row.text("scale") + " ";
      if (!at.equals(here)) {
        here = at;
        i = 0;
        OlsSet set = OlsSet.named(row.text("set"));
        diagnostics = Diagnostics.of(set.design(row.text("scale")), set.fit(row.text("scale")));
      }
      Diagnostics.Row ours = diagnostics.rows().get(i++);
      String who = at + row.text("id") + " ";
      // Residuals are differences of numbers of size 5: absolute 1e-12 is their rounding.
      check.absolute(who + "residual", row.number("residual"), ours.residual(), 1e-12);
      check.relative(who + "fit", row.number("fit"), ours.fitted(), RELATIVE);
      check.relative(who + "leverage", row.number("leverage"), ours.leverage(), RELATIVE);
      check.absolute(
          who + "standardised", row.number("rstandard"), value(ours.standardised()), 1e-10);
      check.absolute(who + "studentised", row.number("rstudent"), value(ours.studentised()), 1e-10);
      check.absolute(who + "cook", row.number("cooks_d"), value(ours.cooksDistance()), 1e-10);
      check.relative(who + "held out", row.number("loo_fit"), value(ours.heldOutFit()), RELATIVE);
    }
  }

  private static double value(org.comparanda.statistics.Outcome<Double> outcome) {
    return outcome.value().orElseThrow();
  }

  private static double[] fitted(Design design, LeastSquaresFit fit) {
    double[] fitted = new double[design.rows()];
    for (int i = 0; i < fitted.length; i++) {
      fitted[i] = fit.at(design.x(i));
    }
    return fitted;
  }
}
