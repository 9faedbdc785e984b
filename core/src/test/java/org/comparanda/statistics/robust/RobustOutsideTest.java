package org.comparanda.statistics.robust;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.comparanda.statistics.Distributions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against R 4.2.2 and robustbase 0.95.0; script j-outlier.R. */
class RobustOutsideTest {
  // covMcd(X), all subsets or 5000 starts, default alpha 0.5: expected/j_mcd_summary.csv,
  // j_outliers.csv. 1e-8 relative: closed formulas on the same subset; R printed 17 digits.
  @ParameterizedTest
  @ValueSource(strings = {"animals_log10", "iris_virginica", "crabs_BF_log", "wolves_all_3"})
  void distancesFromTheBestSubsetAreTheOutsideOnes(String name) {
    RobustSet set = RobustSet.named(name);
    OutsideTable.Row expected = summary(name);
    int[] subset =
        Arrays.stream(expected.text("best_subset").split(";"))
            .mapToInt(set.ids()::indexOf)
            .toArray();
    RobustSpread ours =
        MinimumCovarianceDeterminant.reweighted(
                set.rows(), Concentration.from(set.rows(), subset).orElseThrow())
            .value()
            .orElseThrow();
    OutsideCheck check = check("robust-distances-", name);
    check.relative("crit", expected.number("crit"), ours.logDeterminant(), 1e-8);
    double limit = Distributions.chiSquareQuantile(0.975, set.rows().get(0).length);
    check.exact(
        "flagged",
        expected.text("flagged"),
        String.join(
            ";",
            IntStream.range(0, set.ids().size())
                .filter(i -> ours.squared().get(i) > limit)
                .mapToObj(set.ids()::get)
                .toList()));
    List<OutsideTable.Row> rows =
        OutsideTable.read("expected/j_outliers.csv").where("set", name).rows();
    check.exact(
        "order",
        rows.stream()
            .sorted(Comparator.comparingDouble(r -> r.number("rank_mcd")))
            .map(r -> r.text("id"))
            .toList(),
        IntStream.range(0, set.ids().size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -ours.squared().get(i)))
            .map(set.ids()::get)
            .toList());
    for (int i = 0; i < rows.size(); i++) {
      check.relative(
          rows.get(i).text("id"), rows.get(i).number("d2_mcd"), ours.squared().get(i), 1e-8);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"animals_log10", "iris_virginica", "wolves_all_3"})
  void theSearchEndsInTheOutsideSubset(String name) {
    RobustSet set = RobustSet.named(name);
    RobustSpread ours =
        MinimumCovarianceDeterminant.withDefaults().of(set.rows()).value().orElseThrow();
    check("robust-subset-", name)
        .exact(
            "best subset",
            summary(name).text("best_subset"),
            String.join(";", ours.bestSubset().stream().map(set.ids()::get).toList()));
  }

  // The outside search of the crabs (5000 random starts) stopped in a local optimum: our subset has
  // a smaller determinant by the same formula, which the first test checks on their subset.
  @Test
  void theSearchOfTheCrabsEndsBelowTheOutsideOne() {
    RobustSpread ours =
        MinimumCovarianceDeterminant.withDefaults()
            .of(RobustSet.named("crabs_BF_log").rows())
            .value()
            .orElseThrow();
    assertTrue(ours.logDeterminant() < summary("crabs_BF_log").number("crit"));
  }

  private static OutsideTable.Row summary(String name) {
    return OutsideTable.read("expected/j_mcd_summary.csv").where("set", name).rows().get(0);
  }

  private static OutsideCheck check(String what, String name) {
    return OutsideCheck.named(
        what + name.replace('_', '-').toLowerCase(Locale.ROOT),
        "R 4.2.2, robustbase 0.95.0: covMcd; expected/j_mcd_summary.csv, j_outliers.csv");
  }

  // mahalanobis(X, colMeans(X), cov(X)) of all rows and of all but one: expected/j_outliers.csv.
  // 1e-8 as asked for; the tails are checked elsewhere to 1e-9.
  @ParameterizedTest
  @ValueSource(
      strings = {
        "animals_log10",
        "iris_virginica",
        "penguins_adelie",
        "crabs_BF_log",
        "wolves_all_3"
      })
  void classicalAndLeftOutDistancesAreTheOutsideOnes(String name) {
    RobustSet set = RobustSet.named(name);
    List<RowDistances> ours = RowDistances.of(set.rows()).value().orElseThrow();
    List<OutsideTable.Row> rows =
        OutsideTable.read("expected/j_outliers.csv").where("set", name).rows();
    OutsideCheck check =
        OutsideCheck.named(
            "left-out-" + name.replace('_', '-').toLowerCase(Locale.ROOT),
            "R 4.2.2: mahalanobis, pbeta, pf; expected/j_outliers.csv");
    assertEquals(rows.size(), ours.size());
    for (int i = 0; i < rows.size(); i++) {
      OutsideTable.Row row = rows.get(i);
      String id = row.text("id");
      check.relative(id + " D2", row.number("d2_classical"), ours.get(i).classical(), 1e-8);
      check.relative(id + " p", row.number("p_beta"), ours.get(i).classicalP(), 1e-8);
      check.relative(id + " D2 left out", row.number("d2_left_out"), ours.get(i).leftOut(), 1e-8);
      check.relative(id + " p left out", row.number("p_F_left_out"), ours.get(i).leftOutP(), 1e-8);
    }
  }

  // Own formulas in R 4.2.2: expected/j_single_outlier.csv. 1e-9: closed formulas.
  @Test
  void singleValuesAreTheOutsideOnes() {
    OutsideCheck check =
        OutsideCheck.named(
            "single-value", "R 4.2.2: Grubbs and single value, pt; expected/j_single_outlier.csv");
    List<OutsideTable.Row> rows = OutsideTable.read("expected/j_single_outlier.csv").rows();
    assertEquals(8, rows.size());
    for (OutsideTable.Row row : rows) {
      List<Double> sample = RobustSet.sample(row.text("set"));
      SingleValue ours =
          (row.text("test").startsWith("grubbs")
                  ? SingleValue.furthestOf(sample)
                  : SingleValue.against(sample, row.number("value")))
              .value()
              .orElseThrow();
      String what = row.text("set") + " " + row.text("test") + " " + row.text("value");
      check.relative(what + " value", row.number("value"), ours.value(), 1e-9);
      check.relative(what + " statistic", row.number("statistic"), ours.statistic(), 1e-9);
      check.exact(what + " df", row.count("df"), ours.degreesOfFreedom());
      check.relative(what + " p", row.number("p"), ours.p(), 1e-9);
    }
  }

  @Test
  void rowsInAPlaneHaveNoRobustSpread() {
    List<double[]> plane = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      plane.add(new double[] {i, 2.0 * i});
    }
    assertEquals(
        "Half of the rows lie in a plane: these measurements repeat one another.",
        MinimumCovarianceDeterminant.withDefaults()
            .of(plane)
            .<String>fold(v -> "", none -> none.reason()));
  }

  @Test
  void fewerRowsThanNeededHaveNoRobustSpread() {
    assertEquals(
        "3 rows are too few for a robust spread of 2 measurements.",
        MinimumCovarianceDeterminant.withDefaults()
            .of(List.of(new double[] {1, 2}, new double[] {2, 1}, new double[] {3, 3}))
            .<String>fold(v -> "", none -> none.reason()));
  }
}
