package org.comparanda.statistics.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.comparanda.statistics.Interval;
import org.comparanda.statistics.NotEstimable;
import org.junit.jupiter.api.Test;

class RepeatedReadingsTest {
  private static RepeatedReadings of(double[][] rows) {
    return RepeatedReadings.of(rows).value().orElseThrow();
  }

  private static RepeatedReadings columns(String file, String... names) {
    return of(
        OutsideTable.read("data/" + file).rows().stream()
            .map(r -> List.of(names).stream().mapToDouble(r::number).toArray())
            .toArray(double[][]::new));
  }

  // R 4.2.2, own formulas and anova(lm()): expected/g_tem_limits.csv. 1e-12: closed formulas.
  @Test
  void errorAndLimitsOfTwoMetersAgreeWithR() {
    OutsideCheck check =
        OutsideCheck.named("agreement-tem", "R 4.2.2 stats: expected/g_tem_limits.csv");
    compare(check, "wright_repeat", columns("bland_altman1986.csv", "wright_1", "wright_2"));
    compare(check, "mini_repeat", columns("bland_altman1986.csv", "mini_1", "mini_2"));
    compare(check, "wright_vs_mini_first", columns("bland_altman1986.csv", "wright_1", "mini_1"));
  }

  private static void compare(OutsideCheck check, String set, RepeatedReadings ours) {
    OutsideTable.Row r =
        OutsideTable.read("expected/g_tem_limits.csv").where("set", set).rows().get(0);
    check.exact(set + " n", r.count("n"), ours.subjects());
    check.relative(set + " TEM", r.number("TEM"), ours.tem(), 1e-12);
    check.relative(
        set + " %TEM",
        r.number("rel_TEM_percent"),
        ours.relativeTem().value().orElseThrow(),
        1e-12);
    check.relative(
        set + " reliability",
        r.number("R_sd_of_all_readings"),
        ours.reliability().value().orElseThrow(),
        1e-12);
    check.relative(
        set + " bias", r.number("mean_difference"), ours.bias().value().orElseThrow(), 1e-12);
    Interval limits = ours.limitsOfAgreement().value().orElseThrow();
    check.relative(set + " lower limit", r.number("loa_lower_1.96"), limits.lower(), 1e-12);
    check.relative(set + " upper limit", r.number("loa_upper_1.96"), limits.upper(), 1e-12);
  }

  // psych 2.2.9 ICC(x, lmer = FALSE) in R 4.2.2: expected/g_icc.csv. 1e-10: R printed 17 digits.
  @Test
  void intraclassCorrelationsAgreeWithR() {
    OutsideCheck check =
        OutsideCheck.named("agreement-icc", "R 4.2.2 psych 2.2.9 ICC: expected/g_icc.csv");
    compareIcc(
        check, "shrout_fleiss1979", columns("shrout_fleiss1979.csv", "j1", "j2", "j3", "j4"));
    compareIcc(check, "wright_repeat", columns("bland_altman1986.csv", "wright_1", "wright_2"));
    compareIcc(check, "mini_repeat", columns("bland_altman1986.csv", "mini_1", "mini_2"));
  }

  private static void compareIcc(OutsideCheck check, String set, RepeatedReadings ours) {
    OutsideTable table = OutsideTable.read("expected/g_icc.csv").where("set", set);
    check.relative(
        set + " ICC(1,1)",
        table.where("type", "ICC1").rows().get(0).number("icc"),
        ours.iccOfTakes().value().orElseThrow(),
        1e-10);
    check.relative(
        set + " ICC(2,1)",
        table.where("type", "ICC2").rows().get(0).number("icc"),
        ours.iccOfPersons().value().orElseThrow(),
        1e-10);
  }

  // Worked pairs and triples of facts B08 and B09 (computed there, six decimals printed).
  @Test
  void workedPairsAndTriplesComeOut() {
    RepeatedReadings pairs =
        of(new double[][] {{45.2, 45.4}, {50.1, 50.0}, {47.8, 48.1}, {52.3, 52.2}, {49.0, 49.3}});
    assertEquals(0.154919, pairs.tem(), 5e-7);
    assertEquals(0.316550, pairs.relativeTem().value().orElseThrow(), 5e-7);
    assertEquals(0.995928, pairs.reliability().value().orElseThrow(), 5e-7);
    RepeatedReadings triples =
        of(
            new double[][] {
              {45.2, 45.4, 45.1}, {50.1, 50.0, 50.4}, {47.8, 48.1, 47.9}, {52.3, 52.2, 52.6}
            });
    assertEquals(0.182574, triples.tem(), 5e-7);
    // B09 prints 0.373162 here; by hand the mean is 587.1 / 12 = 48.925, and 18.2574 / 48.925 is:
    assertEquals(0.373171, triples.relativeTem().value().orElseThrow(), 1e-6);
    assertInstanceOf(NotEstimable.class, triples.limitsOfAgreement());
  }

  @Test
  void oneSubjectOrOneReadingCannotBeCompared() {
    assertInstanceOf(NotEstimable.class, RepeatedReadings.of(new double[][] {{1, 2}}));
    assertInstanceOf(NotEstimable.class, RepeatedReadings.of(new double[][] {{1}, {2}}));
  }
}
