package org.comparanda.statistics.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.comparanda.statistics.NotEstimable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KappaTest {
  private static final List<String> GRADES = List.of("Certain", "Probable", "Possible", "Doubtful");

  private static OutsideTable.Row expected(String set, String kind) {
    return OutsideTable.read("expected/g_kappa.csv")
        .where("set", set)
        .where("kind", kind)
        .rows()
        .get(0);
  }

  private static int[][] patients(String town) {
    int[][] counts = new int[4][4];
    OutsideTable.read("data/mspatients_counts.csv")
        .where("patients", town)
        .rows()
        .forEach(
            r ->
                counts[GRADES.indexOf(r.text("rater_new_orleans"))][
                        GRADES.indexOf(r.text("rater_winnipeg"))] =
                    r.count("count"));
    return counts;
  }

  // R 4.2.2, vcd 1.4.11: Kappa(table, weights), confint: expected/g_kappa.csv, script
  // g-measurement-error.R. 1e-12: closed formulas, R printed 17 digits.
  @ParameterizedTest
  @CsvSource({
    "Winnipeg, unweighted, NONE",
    "Winnipeg, weighted_Equal-Spacing, LINEAR",
    "Winnipeg, weighted_Fleiss-Cohen, QUADRATIC",
    "New Orleans, unweighted, NONE",
    "New Orleans, weighted_Equal-Spacing, LINEAR",
    "New Orleans, weighted_Fleiss-Cohen, QUADRATIC"
  })
  void twoRatersAgreeWithR(String town, String kind, Weights weights) {
    same(
        expected("mspatients_" + town, kind),
        CohenKappa.of(patients(town), weights).value().orElseThrow(),
        town + " " + kind);
  }

  @Test
  void twoOfTheSixPsychiatristsAgreeWithR() {
    int[][] counts = new int[5][5];
    OutsideTable.read("data/fleiss1971_ratings.csv")
        .rows()
        .forEach(r -> counts[r.count("r1") - 1][r.count("r2") - 1]++);
    same(
        expected("fleiss1971_r1_r2", "unweighted"),
        CohenKappa.of(counts, Weights.NONE).value().orElseThrow(),
        "fleiss1971_r1_r2");
  }

  private static void same(OutsideTable.Row r, Kappa ours, String what) {
    OutsideCheck check =
        OutsideCheck.named("kappa-" + what, "R 4.2.2, vcd 1.4.11 Kappa: expected/g_kappa.csv");
    check.exact("n", r.count("n"), ours.subjects());
    check.relative("kappa", r.number("kappa"), ours.value(), 1e-12);
    check.relative("standard error", r.number("ase"), ours.standardError(), 1e-12);
    check.relative("lower", r.number("lo95"), ours.interval(0.95).lower(), 1e-12);
    check.relative("upper", r.number("hi95"), ours.interval(0.95).upper(), 1e-12);
    check.relative("agreement", r.number("percent_agreement"), ours.observed(), 1e-12);
  }

  // Fleiss 1971 (published 0.430, from memory) and R 4.2.2: expected/g_kappa.csv.
  @Test
  void sixPsychiatristsAgreeWithR() {
    List<OutsideTable.Row> rows = OutsideTable.read("data/fleiss1971_ratings.csv").rows();
    int[][] counts = new int[rows.size()][5];
    for (int i = 0; i < counts.length; i++) {
      for (String rater : List.of("r1", "r2", "r3", "r4", "r5", "r6")) {
        counts[i][rows.get(i).count(rater) - 1]++;
      }
    }
    FleissKappa ours = FleissKappa.of(counts).value().orElseThrow();
    Kappa kappa = ours.kappa().value().orElseThrow();
    OutsideTable.Row r = expected("fleiss1971", "fleiss_kappa (se under null)");
    OutsideCheck check =
        OutsideCheck.named("kappa-fleiss", "R 4.2.2, formula in expected/g_kappa.csv");
    check.exact("n", r.count("n"), kappa.subjects());
    check.relative("kappa", r.number("kappa"), kappa.value(), 1e-12);
    check.relative("null error", r.number("ase"), ours.standardErrorUnderChance(), 1e-12);
    check.relative("agreement", r.number("percent_agreement"), kappa.observed(), 1e-12);
    assertEquals(0.430, kappa.value(), 0.0005); // half the last printed digit
  }

  // By hand: 35 of 50 agree, chance 0.5·0.6 + 0.5·0.4 = 0.5, so (0.7 − 0.5)/0.5.
  @Test
  void handExampleOfTwoCategories() {
    Kappa kappa =
        CohenKappa.of(new int[][] {{20, 5}, {10, 15}}, Weights.NONE).value().orElseThrow();
    assertEquals(0.4, kappa.value(), 1e-15);
  }

  @Test
  void oneCategoryAloneIsNotEstimable() {
    assertInstanceOf(NotEstimable.class, CohenKappa.of(new int[][] {{9, 0}, {0, 0}}, Weights.NONE));
    assertInstanceOf(
        NotEstimable.class,
        FleissKappa.of(new int[][] {{2, 0}, {2, 0}, {2, 0}}).value().orElseThrow().kappa());
  }
}
