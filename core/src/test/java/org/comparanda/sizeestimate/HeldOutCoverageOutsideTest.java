package org.comparanda.sizeestimate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.outside.OutsideTable;
import org.comparanda.statistics.line.HeldOutCoverage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How often the 95 % prediction interval holds an animal left out, on every set of 30 or more. */
class HeldOutCoverageOutsideTest {
  // Inside: counted in Python 3.11 by fitting the line again without each row (plain floats, t by
  // Simpson's rule). Low and high: Wilson's formula there, four decimals.
  @ParameterizedTest(name = "{0} {1} on {2} {8}")
  @CsvSource({
    "mammals, brain_g, body_kg, LN, 59, 62, 0.8671, 0.9834, ''",
    "tortues, length_mm, width_mm, LN, 48, 48, 0.9259, 1.0000, ''",
    "penguins, body_mass, flipper_length, LN, 322, 342, 0.9114, 0.9618, ''",
    "carni70_traits, range_km, size_kg, LN, 67, 70, 0.8814, 0.9853, ''",
    "mammal49_traits, home_range_km2, body_mass_kg, LN, 46, 49, 0.8348, 0.9790, ''",
    "iris, sepal_length, petal_length, LN, 143, 150, 0.9068, 0.9772, ''",
    "microtus_reference, Length, M1Left, LN, 43, 45, 0.8517, 0.9877, ''",
    "microtus_unidentified, Length, M1Left, LN, 185, 199, 0.8854, 0.9576, ''",
    "mouse_t2_distances, d13, d12, LN, 73, 76, 0.8903, 0.9865, ''",
    "nist_norris, y, x, RAW, 33, 36, 0.7817, 0.9713, ''",
    "nist_pontius, y, x, RAW, 38, 40, 0.8350, 0.9862, ''",
    "crabs, CW, CL, LN, 192, 200, 0.9231, 0.9796, ''",
    "crabs, RW, CL, LN, 48, 50, 0.8654, 0.9890, BF",
    "crabs, RW, CL, LN, 49, 50, 0.8950, 0.9965, BM",
    "crabs, RW, CL, LN, 48, 50, 0.8654, 0.9890, OF",
    "crabs, RW, CL, LN, 48, 50, 0.8654, 0.9890, OM",
  })
  void ninetyFivePerCentLieInsideWilsonsLimits(
      String file,
      String y,
      String x,
      LineScale scale,
      int inside,
      int of,
      double low,
      double high,
      String group) {
    HeldOutCoverage coverage = coverage(file, y, x, scale, group);
    counted(coverage, inside, of, low, high);
    assertEquals(true, coverage.asPromised());
  }

  // As above. Four groups that are spread around lines of their own (the rows BF to OM) make one
  // wide line together: its interval holds nearly every animal, more than it promises.
  @ParameterizedTest(name = "{0} {1} on {2}")
  @CsvSource({"crabs, RW, CL, LN, 199, 200, 0.9722, 0.9991"})
  void aLineOverGroupsWithLinesOfTheirOwnHoldsMoreThanItPromises(
      String file,
      String y,
      String x,
      LineScale scale,
      int inside,
      int of,
      double low,
      double high) {
    HeldOutCoverage coverage = coverage(file, y, x, scale, "");
    counted(coverage, inside, of, low, high);
    assertEquals(false, coverage.asPromised());
  }

  private static void counted(
      HeldOutCoverage coverage, int inside, int of, double low, double high) {
    assertEquals(inside, coverage.inside().hits());
    assertEquals(of, coverage.inside().tries());
    assertEquals(low, coverage.inside().wilson(0.95).lower(), 5e-5); // printed to four decimals
    assertEquals(high, coverage.inside().wilson(0.95).upper(), 5e-5);
  }

  private static HeldOutCoverage coverage(
      String file, String y, String x, LineScale scale, String group) {
    OutsideTable table =
        OutsideTable.read("data/" + file + ".csv")
            .where(row -> group.isEmpty() || row.text("group").equals(group));
    SizeQuestion question = new SizeQuestion(y, List.of(x), Set.of(), LineMethod.OLS, scale, 0.95);
    return SizeDesk.of(TableShelf.of(table, Optional.empty(), x, y), TableShelf.NO_PROTOCOL)
        .line(question)
        .then(
            line ->
                line.diagnostics()
                    .then(d -> HeldOutCoverage.of(d, line.degreesOfFreedom(), question.level())))
        .value()
        .orElseThrow();
  }
}
