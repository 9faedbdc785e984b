package org.comparanda.statistics.line;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.junit.jupiter.api.Test;

/** 1e-8 relative: the outside values carry 17 digits. */
class MajorAxesOutsideTest {
  private static final double RELATIVE = 1e-8;

  @Test
  void slopesInterceptsAndLimitsAgreeWithTheFormulasInR() {
    var check =
        OutsideCheck.named(
            "lines-axes", "R 4.2.2, formulas in the first line of expected/b_line_fits.csv");
    for (OutsideTable.Row row : OutsideTable.read("expected/b_line_fits.csv").rows()) {
      if (row.text("method").equals("OLS")) {
        continue;
      }
      String at = row.text("set") + " " + row.text("method") + " ";
      Design design = AxisSet.named(row.text("set"));
      AxisLine line =
          (row.text("method").equals("SMA")
                  ? StandardisedMajorAxis.withDefaults().fit(design)
                  : MajorAxis.withDefaults().fit(design))
              .value()
              .orElseThrow();
      check.exact(at + "n", row.count("n"), line.n());
      check.relative(at + "r", row.number("r"), line.r(), RELATIVE);
      check.relative(at + "slope", row.number("slope"), line.slope(), RELATIVE);
      check.relative(at + "intercept", row.number("intercept"), line.intercept(), RELATIVE);
      if (row.has("lo95")) {
        ConfidenceInterval limits = line.slopeInterval().value().orElseThrow();
        check.relative(at + "lo", row.number("lo95"), limits.lower(), RELATIVE);
        check.relative(at + "hi", row.number("hi95"), limits.upper(), RELATIVE);
      } else {
        check.exact(at + "no limits", true, line.slopeInterval().value().isEmpty());
      }
    }
  }

  @Test
  void commonSlopeAndCovarianceAnalysisAgreeWithR() {
    var check =
        OutsideCheck.named(
            "lines-common-slope", "R 4.2.2, own formula and anova(); expected/b_common_slope.csv");
    for (OutsideTable.Row row : OutsideTable.read("expected/b_common_slope.csv").rows()) {
      String at = row.text("test") + " ";
      List<Design> groups =
          Arrays.stream(row.text("members").split(";", -1)).map(AxisSet::named).toList();
      CommonSlope common = CommonSlope.test(groups).value().orElseThrow();
      check.exact(at + "df", row.count("df"), common.degreesOfFreedom());
      check.relative(at + "slope", row.number("common_slope"), common.commonSlope(), RELATIVE);
      check.relative(at + "LR", row.number("LR_n"), common.statistic(), RELATIVE);
      check.relative(
          at + "LR small", row.number("LR_n_minus_2.5"), common.smallSampleStatistic(), RELATIVE);
      check.relative(at + "p", row.number("p_LR_n"), common.p(), RELATIVE);
      check.relative(
          at + "p small", row.number("p_LR_n_minus_2.5"), common.smallSampleP(), RELATIVE);
      CovarianceAnalysis ancova = CovarianceAnalysis.of(groups).value().orElseThrow();
      check.relative(at + "F slope", row.number("ols_slope_F"), ancova.slopes().f(), RELATIVE);
      check.exact(at + "df1", row.count("ols_slope_df1"), ancova.slopes().df1());
      check.exact(at + "df2", row.count("ols_slope_df2"), ancova.slopes().df2());
      check.relative(at + "p slope", row.number("ols_slope_p"), ancova.slopes().p(), RELATIVE);
      check.relative(
          at + "F intercept", row.number("ols_intercept_F"), ancova.intercepts().f(), RELATIVE);
      check.relative(
          at + "p intercept", row.number("ols_intercept_p"), ancova.intercepts().p(), RELATIVE);
    }
  }

  @Test
  void steepAxesAreTheInverseOfFlatOnes() {
    // The major axis is symmetric: swapping x and y inverts its slope (definition).
    Design flat = Design.of(new double[] {1, 2, 3, 5}, new double[] {1.1, 1.2, 1.25, 1.5});
    Design steep = Design.of(new double[] {1.1, 1.2, 1.25, 1.5}, new double[] {1, 2, 3, 5});
    double a = MajorAxis.withDefaults().fit(flat).value().orElseThrow().slope();
    double b = MajorAxis.withDefaults().fit(steep).value().orElseThrow().slope();
    assertTrue(Math.abs(a * b - 1) < 1e-12, a + " and " + b); // rounding
  }
}
