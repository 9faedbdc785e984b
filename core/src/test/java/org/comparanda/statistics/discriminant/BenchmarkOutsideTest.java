package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;

import java.util.stream.IntStream;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.junit.jupiter.api.Test;

/**
 * The outside benchmark: made by its own generator, results compared; times are taken elsewhere.
 */
class BenchmarkOutsideTest {
  private static final int MODULUS = 2147483647;
  private static final int COLUMNS = 20;
  private static final OutsideTable EXPECTED = OutsideTable.read("expected/bench_check_r.csv");
  private static final OutsideCheck CHECK =
      OutsideCheck.named(
          "benchmark", "R 4.2.2 MASS 7.3.58.2 lda: expected/bench_check_r.csv, timings.md");

  /** s to 16807 s mod 2147483647 (Park and Miller 1988). */
  private static final class Minimal {
    private long s;

    Minimal(long seed) {
      s = seed;
    }

    long next() {
      s = 16807 * s % MODULUS;
      return s;
    }

    double normal() {
      long sum = 0;
      for (int i = 0; i < 12; i++) {
        sum += next();
      }
      return sum / (double) MODULUS - 6.0;
    }
  }

  private static double mean(int c, int j) {
    return 100 + (((7 * c + 3 * j + c * j) % 11) - 5) * 0.35;
  }

  // Hits exact; sums of largest posteriors 1e-8 relative.
  @Test
  void twoThousandRowsOfTwelveGroups() {
    Minimal random = new Minimal(12345);
    GroupedRows.Builder builder = GroupedRows.builder(COLUMNS, 12);
    for (int i = 0; i < 2000; i++) {
      double size = random.normal();
      double[] x = new double[COLUMNS];
      for (int j = 0; j < COLUMNS; j++) {
        x[j] = (mean(i % 12, j + 1) + 4.0 * size) + 2.5 * random.normal();
      }
      builder.add(i % 12, i, x);
    }
    GroupedRows rows = builder.build();
    CHECK.relative("first entry", expected("set2000 first entry"), rows.value(0, 0), 1e-15);
    CHECK.relative("last entry", expected("set2000 last entry"), rows.value(1999, 19), 1e-15);
    Trial trial = Trial.of(rows, new Linear(), Priors.equal(12));
    CHECK.exact(
        "2,000 rows, held-out hits", (int) expected("set2000 lda loo hits"), trial.hits().hits());
    CHECK.relative(
        "2,000 rows, sum of largest held-out shares",
        expected("set2000 sum of largest loo posterior"),
        trial.rows().stream().mapToDouble(r -> largest(value(r.shares()))).sum(),
        1e-8);
  }

  @Test
  void eachBoneOnItsOwnMeasurementsWithItsAnimalOut() {
    GroupedRows rows = animals();
    CHECK.relative(
        "animals, last entry", expected("animals last entry"), rows.value(839, 19), 1e-15);
    boolean[][] present = present();
    CHECK.exact(
        "animals, own subset, animal out, hits",
        (int) expected("animals hits leave-one-animal-out"),
        hits(rows, present));
    CHECK.exact(
        "animals, own subset, row out, hits",
        (int) expected("animals hits naive leave-one-row-out"),
        hits(rows.eachRowItsOwnUnit(), present));
    UnitMoments units = UnitMoments.of(rows);
    double sum = 0;
    for (int r = 0; r < 840; r++) {
      sum += largest(shares(units, rows, present[r], r));
    }
    CHECK.relative(
        "animals, sum of largest shares", expected("animals sum of largest posterior"), sum, 1e-8);
  }

  private static int hits(GroupedRows rows, boolean[][] present) {
    UnitMoments units = UnitMoments.of(rows);
    int hits = 0;
    for (int r = 0; r < rows.rows(); r++) {
      hits += shares(units, rows, present[r], r).largest() == rows.group(r) ? 1 : 0;
    }
    return hits;
  }

  private static Shares shares(UnitMoments units, GroupedRows rows, boolean[] present, int row) {
    int[] columns = IntStream.range(0, COLUMNS).filter(j -> present[j]).toArray();
    GroupMoments left = units.without(rows.unit(row)).forColumns(columns);
    return value(new Linear().fitMoments(left, Priors.equal(12)))
        .shares(Vectors.chosen(rows.row(row), columns));
  }

  private static GroupedRows animals() {
    Minimal random = new Minimal(777);
    double[][] own = new double[168][COLUMNS + 1];
    for (double[] animal : own) {
      for (int j = 0; j <= COLUMNS; j++) {
        animal[j] = random.normal();
      }
    }
    GroupedRows.Builder builder = GroupedRows.builder(COLUMNS, 12);
    for (int r = 0; r < 840; r++) {
      int a = r / 5;
      double[] x = new double[COLUMNS];
      for (int j = 0; j < COLUMNS; j++) {
        x[j] =
            ((mean(a % 12, j + 1) + 4.0 * own[a][0]) + 1.5 * own[a][j + 1]) + 2.0 * random.normal();
      }
      builder.add(a % 12, a, x);
    }
    return builder.build();
  }

  private static boolean[][] present() {
    Minimal random = new Minimal(778);
    boolean[][] present = new boolean[840][COLUMNS];
    for (boolean[] row : present) {
      for (int j = 0; j < COLUMNS; j++) {
        row[j] = random.next() >= 0.30 * MODULUS;
      }
    }
    return present;
  }

  private static double largest(Shares shares) {
    return shares.of(shares.largest());
  }

  private static double expected(String check) {
    return EXPECTED.where("check", check).rows().get(0).number("value");
  }
}
