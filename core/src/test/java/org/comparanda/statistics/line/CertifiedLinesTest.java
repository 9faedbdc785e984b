package org.comparanda.statistics.line;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The NIST certified sets: at least 10 digits in every coefficient and its standard error. */
class CertifiedLinesTest {
  private static final double TEN_DIGITS = 1e-10;

  @ParameterizedTest
  @ValueSource(strings = {"norris", "pontius", "longley", "noint1"})
  void everyCoefficientHasTenDigits(String set) {
    var check =
        OutsideCheck.named(
            "lines-nist-" + set,
            "NIST StRD certified values as quoted in expected/a_nist_certified.csv");
    LeastSquaresFit fit = fit(set);
    for (OutsideTable.Row row :
        OutsideTable.read("expected/a_nist_certified.csv").where("set", set).rows()) {
      Coefficient ours = coefficient(fit, row.text("term"));
      String term = set + " " + row.text("term");
      check.relative(term, row.number("certified"), ours.value(), TEN_DIGITS);
      check.relative(term + " se", row.number("certified_se"), ours.standardError(), TEN_DIGITS);
      check.relative(
          term + " residual ss",
          row.number("certified_residual_ss"),
          fit.residualSumOfSquares(),
          TEN_DIGITS);
      if (row.has("certified_r2")) {
        check.relative(
            term + " r2",
            row.number("certified_r2"),
            fit.rSquared().value().orElseThrow(),
            TEN_DIGITS);
      }
    }
  }

  private static Coefficient coefficient(LeastSquaresFit fit, String term) {
    return switch (term) {
      case "intercept" -> fit.intercept();
      case "x" -> fit.slope(0);
      case "x^2" -> fit.slope(1);
      default -> fit.slope(Integer.parseInt(term.substring(1)) - 1);
    };
  }

  private static LeastSquaresFit fit(String set) {
    List<List<Double>> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (OutsideTable.Row row : OutsideTable.read("data/nist_" + set + ".csv").rows()) {
      List<Double> predictors = new ArrayList<>();
      for (String column : row.cells().getHeader()) {
        if (column.startsWith("y")) {
          y.add(row.number(column));
        } else {
          predictors.add(row.number(column));
        }
      }
      if (set.equals("pontius")) {
        predictors.add(predictors.get(0) * predictors.get(0));
      }
      x.add(predictors);
    }
    LeastSquares method =
        set.equals("noint1") ? LeastSquares.throughOrigin() : LeastSquares.withIntercept();
    return method.fit(Design.of(x, y)).value().orElseThrow();
  }
}
