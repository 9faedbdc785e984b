package org.comparanda.statistics.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How far the promise of an interval holds, and what single animals do to a line. */
class LineTrustTest {
  @ParameterizedTest
  @EnumSource(
      value = OlsSet.class,
      names = {"MAMMALS", "TORTUES_LEN_WID", "CARNI70", "PENGUINS"})
  void heldOutAnimalsFallInsideAsOftenAsPromisedOnEverySetOfThirtyOrMore(OlsSet set) {
    var check =
        OutsideCheck.named(
            "lines-coverage-" + set.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
            "level promised, inside the Wilson 95 % interval of the held-out rate");
    LeastSquaresFit fit = set.fit("ln");
    HeldOutCoverage coverage =
        HeldOutCoverage.of(Diagnostics.of(set.design("ln"), fit), fit.degreesOfFreedom(), 0.95)
            .value()
            .orElseThrow();
    Interval wilson = coverage.inside().wilson(0.95);
    String said = coverage.inside() + " " + wilson.lower() + " to " + wilson.upper();
    check.exact(set + " ln, 0.95 inside: " + said, true, coverage.asPromised());
  }

  @ParameterizedTest
  @EnumSource(
      value = OlsSet.class,
      names = {"MAMMALS", "TORTUES_LEN_WID", "ANIMALS_ALL"})
  void coverageCountsTheStudentisedResidualsThatRGives(OlsSet set) {
    // R 4.2.2 rstudent(), expected/a_ols_rows.csv, and qt(), which k_quantiles.csv checks.
    List<OutsideTable.Row> rows =
        OutsideTable.read("expected/a_ols_rows.csv")
            .where("scale", "ln")
            .where(r -> r.text("set").equalsIgnoreCase(set.name()))
            .rows();
    double t = Distributions.tQuantile(0.975, rows.size() - 3.0);
    long inside = rows.stream().filter(r -> Math.abs(r.number("rstudent")) <= t).count();
    LeastSquaresFit fit = set.fit("ln");
    HeldOutCoverage ours =
        HeldOutCoverage.of(Diagnostics.of(set.design("ln"), fit), fit.degreesOfFreedom(), 0.95)
            .value()
            .orElseThrow();
    assertEquals(inside, ours.inside().hits());
  }

  @Test
  void aRobustLineSetsTheDinosaursAside() {
    // Rousseeuw and Leroy 1987, p. 57: the three dinosaurs are outliers of brain on body mass.
    OlsSet set = OlsSet.ANIMALS_ALL;
    RobustLine robust = RobustLine.fit(set.design("log10"), 20417).value().orElseThrow();
    Map<String, Integer> aside = new TreeMap<>();
    robust.setAside().forEach(i -> aside.put(set.rows().get(i).text("name"), i));
    assertTrue(
        aside.keySet().containsAll(List.of("Brachiosaurus", "Dipliodocus", "Triceratops")),
        aside.toString());
    // R 4.2.2 lm without them, expected/a_ols_fit.csv, animals_nodino: the 95 % limits of its
    // slope.
    OutsideTable.Row without =
        OutsideTable.read("expected/a_ols_fit.csv")
            .where("set", "animals_nodino")
            .where("scale", "log10")
            .rows()
            .get(0);
    double slope = robust.fit().slope(0).value();
    assertTrue(
        slope > without.number("slope_lo95") && slope < without.number("slope_hi95"),
        "slope " + slope);
  }

  @Test
  void theSameSeedGivesTheSameRobustLine() {
    Design design = OlsSet.CORVUS.design("ln");
    assertEquals(
        RobustLine.fit(design, 7).value().orElseThrow().fit().slope(0),
        RobustLine.fit(design, 7).value().orElseThrow().fit().slope(0));
  }

  @Test
  void fiveRowsAreTooFewForARobustLine() {
    Design few = Design.of(new double[] {1, 2, 3, 4, 5}, new double[] {1, 2, 3, 4, 6});
    assertTrue(RobustLine.fit(few, 1).value().isEmpty());
  }
}
