package org.comparanda.statistics.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Predicate;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.junit.jupiter.api.Test;

/** Normality, equal spread, reading a line backwards, mixtures of lines. */
class LineTestsOutsideTest {
  @Test
  void shapiroWilkAgreesWithR() {
    var check = OutsideCheck.named("lines-shapiro", "R 4.2.2 shapiro.test; expected/f_cv.csv");
    for (OutsideTable.Row row : OutsideTable.read("expected/f_cv.csv").rows()) {
      double[] values = values(row.text("set"));
      ShapiroWilk test = ShapiroWilk.test(values).value().orElseThrow();
      check.exact(row.text("set") + " n", row.count("n"), values.length);
      // 1e-8: R's own normal quantile inside shapiro.test is good to single steps of 1e-9.
      check.relative(row.text("set") + " W", row.number("shapiro_W"), test.w(), 1e-8);
      check.relative(row.text("set") + " p", row.number("shapiro_p"), test.p(), 1e-8);
    }
  }

  @Test
  void readingBackTheEndOfAPredictionIntervalFindsItsX() {
    // Fieller's limits are by definition the x whose prediction interval just reaches y.
    var check =
        OutsideCheck.named(
            "lines-inverse",
            "R 4.2.2 predict.lm(interval='prediction'); expected/a_ols_intervals.csv");
    for (OutsideTable.Row row :
        OutsideTable.read("expected/a_ols_intervals.csv").where("set", "tortues_len_wid").rows()) {
      OlsSet set = OlsSet.TORTUES_LEN_WID;
      String scale = row.text("scale");
      double x0 = OlsSet.forward(scale, row.number("x0"));
      for (String end : List.of("pi_lo", "pi_hi")) {
        InversePrediction back =
            InversePrediction.of(
                    set.design(scale), set.fit(scale), row.number(end), row.number("level"))
                .value()
                .orElseThrow();
        double found = end.equals("pi_lo") ? back.limits().upper() : back.limits().lower();
        check.relative("x at " + scale + " " + end + " of " + row.text("x0"), x0, found, 1e-8);
      }
    }
  }

  @Test
  void aSlopeNotClearOfZeroCantBeReadBackwards() {
    Design noise = Design.of(new double[] {1, 2, 3, 4, 5}, new double[] {3, 1, 2, 3.5, 1.2});
    LeastSquaresFit fit = LeastSquares.withIntercept().fit(noise).value().orElseThrow();
    assertTrue(InversePrediction.of(noise, fit, 2, 0.95).value().isEmpty());
  }

  @Test
  void aMixtureOfOneLineIsThatLine() {
    // R 4.2.2 predict.lm, expected/a_ols_intervals.csv, mammals, ln, x0 = 100, level 0.95.
    OutsideTable.Row row =
        OutsideTable.read("expected/a_ols_intervals.csv")
            .where("set", "mammals")
            .where("scale", "ln")
            .where("level", "0.94999999999999996")
            .where("x0", "100")
            .rows()
            .get(0);
    TMixture one =
        TMixture.of(List.of(new TMixture.Part(0.3, row.number("fit"), row.number("se_pred"), 60)))
            .value()
            .orElseThrow();
    // 1e-9: the mixture's limits are found by halving.
    assertEquals(row.number("pi_lo"), one.interval(0.95).lower(), 1e-9);
    assertEquals(row.number("pi_hi"), one.interval(0.95).upper(), 1e-9);
  }

  @Test
  void aMixtureOfTwoFarLinesHasTheTailsOfEach() {
    // By hand: half of a t around -100 and half around 100; the 2.5 % point of the whole is the
    // 5 % point of the left part: t(0.05, 3) = -2.353363434801823 (R 4.2.2 qt(0.05, 3), from
    // memory).
    TMixture two =
        TMixture.of(List.of(new TMixture.Part(2, -100, 1, 3), new TMixture.Part(2, 100, 1, 3)))
            .value()
            .orElseThrow();
    // 1e-6: the far part adds 0.5·P(t < -197.6) = 1e-7 to the tail.
    assertEquals(-102.3533634348018, two.interval(0.95).lower(), 1e-5);
    assertEquals(0, two.lowerTail(0) - 0.5, 1e-12); // symmetry
  }

  @Test
  void spreadThatGrowsIsFoundAndEvenSpreadIsNot() {
    double[] x = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12};
    double[] fan = new double[12];
    double[] even = new double[12];
    for (int i = 0; i < 12; i++) {
      double sign = i % 4 < 2 ? 1 : -1;
      fan[i] = x[i] + sign * 0.1 * x[i] * x[i];
      even[i] = x[i] + sign;
    }
    assertTrue(spread(x, fan) < 0.05, "p " + spread(x, fan));
    assertTrue(spread(x, even) > 0.3, "p " + spread(x, even));
  }

  // Through the correlation of x with the squared residuals: expected/f_equal_spread.csv. 1e-8
  // relative: issue 5; p far out in the tail doubles a relative error of the statistic.
  @Test
  void equalSpreadAgreesWithTheCorrelation() {
    var check =
        OutsideCheck.named(
            "lines-equal-spread", "Python 3.11, numpy 2.4.6; expected/f_equal_spread.csv");
    List<OutsideTable.Row> rows = OutsideTable.read("expected/f_equal_spread.csv").rows();
    assertEquals(12, rows.size());
    for (OutsideTable.Row row : rows) {
      OlsSet set = OlsSet.named(row.text("set"));
      String scale = row.text("scale");
      EqualSpread ours = EqualSpread.test(set.design(scale), set.fit(scale)).value().orElseThrow();
      String at = row.text("set") + " " + scale + " ";
      check.exact(at + "n", row.count("n"), set.rows().size());
      check.relative(at + "statistic", row.number("statistic"), ours.statistic(), 1e-8);
      check.relative(at + "p", row.number("p"), ours.p(), 1e-8);
    }
  }

  private static double spread(double[] x, double[] y) {
    Design design = Design.of(x, y);
    LeastSquaresFit fit = LeastSquares.withIntercept().fit(design).value().orElseThrow();
    return EqualSpread.test(design, fit).value().orElseThrow().p();
  }

  private static double[] values(String set) {
    return switch (set) {
      case "tortues_length" -> column("tortues", "length_mm", r -> true);
      case "tortues_height" -> column("tortues", "height_mm", r -> true);
      case "tortues_F_length" -> column("tortues", "length_mm", r -> r.text("sex").equals("F"));
      case "tortues_M_length" -> column("tortues", "length_mm", r -> r.text("sex").equals("M"));
      case "gentoo_body_mass" ->
          column("penguins", "body_mass", r -> r.text("species").equals("Gentoo"));
      case "gentoo_bill_depth" ->
          column("penguins", "bill_depth", r -> r.text("species").equals("Gentoo"));
      case "penguin_flipper" -> column("penguins", "flipper_length", r -> true);
      case "crabs_OM_CL" -> column("crabs", "CL", r -> r.text("group").equals("OM"));
      case "microtus_unidentified_M1Left" -> column("microtus_unidentified", "M1Left", r -> true);
      case "corvus_wing" -> column("corvus", "wing_mm", r -> true);
      default -> column("corvus", "bill_mm", r -> r.text("stock").equals("amer"));
    };
  }

  private static double[] column(
      String file, String column, Predicate<OutsideTable.Row> condition) {
    return OutsideTable.read("data/" + file + ".csv")
        .where(condition)
        .where(row -> row.has(column))
        .rows()
        .stream()
        .mapToDouble(row -> row.number(column))
        .toArray();
  }
}
