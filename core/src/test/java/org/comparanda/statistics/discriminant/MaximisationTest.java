package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideSet;
import org.comparanda.outside.OutsideTable;
import org.comparanda.statistics.NotEstimable;
import org.comparanda.statistics.SymmetricMatrix;
import org.junit.jupiter.api.Test;

class MaximisationTest {
  private static final Maximisation EM = Maximisation.withDefaults();

  // 1e-10 relative: without holes the first step is the answer.
  @Test
  void withoutHolesItIsThePlainFit() {
    GroupedRows iris = OutsideSet.named("iris").rows();
    GroupMoments plain = GroupMoments.of(iris);
    GroupMoments ours = value(EM.fit(holed(iris, 0, 1)));
    same(value(plain.pooledCovariance()), value(ours.pooledCovariance()), 1e-10);
    for (int g = 0; g < 3; g++) {
      for (int j = 0; j < 4; j++) {
        assertEquals(plain.mean(g)[j], ours.mean(g)[j], 1e-10);
      }
    }
  }

  // By hand (Anderson 1957, J. Am. Stat. Assoc. 52:200-203): x = 1, 2, 3, 4, 10, y = 2, 3, 5, 6 for
  // the first four. Slope 7/5, residual variance (10 - 49/5)/4 = 0.05; mean of x 4, so of y
  // 4 + 1.4 (4 - 2.5) = 6.1; variance of x 10, covariance 14, variance of y 0.05 + 1.96 * 10 =
  // 19.65;
  // all times n/(n - k) = 5/4. 1e-8: the steps stop at 1e-12 of a standard deviation.
  @Test
  void aTailOfMissingValuesByHand() {
    RowsWithHoles rows =
        RowsWithHoles.builder(2, 1)
            .add(0, 0, Map.of(0, 1.0, 1, 2.0))
            .add(0, 1, Map.of(0, 2.0, 1, 3.0))
            .add(0, 2, Map.of(0, 3.0, 1, 5.0))
            .add(0, 3, Map.of(0, 4.0, 1, 6.0))
            .add(0, 4, Map.of(0, 10.0))
            .build();
    GroupMoments ours = value(EM.fit(rows));
    assertEquals(4, ours.mean(0)[0], 1e-8);
    assertEquals(6.1, ours.mean(0)[1], 1e-8);
    SymmetricMatrix w = value(ours.pooledCovariance());
    assertEquals(12.5, w.get(0, 0), 1e-8);
    assertEquals(17.5, w.get(0, 1), 1e-8);
    assertEquals(24.5625, w.get(1, 1), 1e-8);
  }

  // Monotone holes over two groups have a closed form, too: the regression of y on x within groups
  // from the complete rows (pooled slope b, residual variance by maximum likelihood), carried over
  // to
  // all rows: mean of y in a group = mean y + b (mean x of all - mean x of the complete).
  @Test
  void aTailOfMissingValuesInTwoGroupsHasItsClosedForm() {
    GroupedRows crabs = OutsideSet.named("crabs").rows().forColumns(0, 3);
    RowsWithHoles.Builder builder = RowsWithHoles.builder(2, 4);
    for (int i = 0; i < crabs.rows(); i++) {
      builder.add(
          crabs.group(i),
          i,
          i % 3 == 0
              ? Map.of(0, crabs.value(i, 0))
              : Map.of(0, crabs.value(i, 0), 1, crabs.value(i, 1)));
    }
    RowsWithHoles rows = builder.build();
    GroupMoments ours = value(EM.fit(rows));
    GroupMoments complete = GroupMoments.of(rows.complete(0, 1));
    GroupMoments x = GroupMoments.of(rows.complete(0));
    double b = complete.scatter().get(0, 1) / complete.scatter().get(0, 0);
    double residual =
        (complete.scatter().get(1, 1) - b * complete.scatter().get(0, 1)) / complete.rows();
    double xx = x.scatter().get(0, 0) / 200;
    for (int g = 0; g < 4; g++) {
      double expected = complete.mean(g)[1] + b * (x.mean(g)[0] - complete.mean(g)[0]);
      assertEquals(expected, ours.mean(g)[1], 1e-7);
    }
    SymmetricMatrix w = value(ours.pooledCovariance());
    assertEquals(b * xx * 200 / 196, w.get(0, 1), 1e-7);
    assertEquals((residual + b * b * xx) * 200 / 196, w.get(1, 1), 1e-7);
  }

  // Python 3, scipy 1.17.1: the observed-data likelihood maximised by its score, no expectation
  // step;
  // scripts/missing-em.py. 1e-8 relative: the outside score is zero to 2e-13.
  @Test
  void penguinsWithHolesHaveTheMaximumThatAnotherProgramFinds() {
    OutsideSet set = OutsideSet.named("penguins");
    OutsideTable mask = OutsideTable.read("data/penguins_mask.csv");
    RowsWithHoles.Builder builder = RowsWithHoles.builder(4, 3);
    for (int i = 4; i < set.ids().size(); i += 9) {
      OutsideTable.Row holes = mask.where("id", set.ids().get(i)).rows().get(0);
      Map<Integer, Double> cells = new HashMap<>();
      for (int j = 0; j < 4; j++) {
        if (holes.text(set.variables().get(j)).equals("1")) {
          cells.put(j, set.rows().value(i, j));
        }
      }
      builder.add(set.rows().group(i), i, cells);
    }
    GroupMoments ours = value(EM.fit(builder.build()));
    SymmetricMatrix w = value(ours.pooledCovariance());
    OutsideCheck check =
        OutsideCheck.named(
            "maximisation-penguins",
            "Python 3, scipy 1.17.1, optimize.root on the score: expected/d_missing_ml.csv");
    OutsideTable expected = OutsideTable.read("expected/d_missing_ml.csv");
    for (OutsideTable.Row row : expected.where("kind", "mean").rows()) {
      double mean =
          ours.mean(set.group(row.text("class")))[set.variables().indexOf(row.text("column"))];
      check.relative(
          "mean " + row.text("class") + " " + row.text("column"), row.number("value"), mean, 1e-8);
    }
    for (OutsideTable.Row row : expected.where("kind", "covariance").rows()) {
      int i = set.variables().indexOf(row.text("column"));
      int j = set.variables().indexOf(row.text("other"));
      check.relative(
          "covariance " + row.text("column") + " " + row.text("other"),
          row.number("value"),
          w.get(i, j),
          1e-8);
    }
  }

  @Test
  void theOrderOfRowsAndMeasurementsDoesNotMatter() {
    GroupedRows penguins = OutsideSet.named("penguins").rows();
    GroupMoments ours = value(EM.fit(holed(penguins, 0.2, 1)));
    GroupMoments turned = value(EM.fit(holed(penguins, 0.2, -1)));
    same(
        value(ours.pooledCovariance()),
        value(turned.forColumns(3, 2, 1, 0).pooledCovariance()),
        1e-6);
  }

  @Test
  void aPairHardlyMeasuredTogetherIsNotEstimable() {
    RowsWithHoles.Builder builder = RowsWithHoles.builder(2, 1);
    for (int i = 0; i < 20; i++) {
      builder.add(0, i, i < 3 ? Map.of(0, 1.0 * i, 1, 2.0 * i * i) : Map.of(i % 2, 1.0 * i));
    }
    assertInstanceOf(NotEstimable.class, EM.fit(builder.build()));
  }

  @Test
  void aGroupThatNeverHadTheMeasurementIsNotEstimable() {
    RowsWithHoles.Builder builder = RowsWithHoles.builder(2, 2);
    for (int i = 0; i < 9; i++) {
      builder.add(0, i, Map.of(0, Math.sin(i), 1, Math.cos(3 * i)));
    }
    builder.add(1, 9, Map.of(0, 4.0));
    assertInstanceOf(NotEstimable.class, EM.fit(builder.build()));
  }

  /** The rows with holes of the chance given; direction -1 turns rows and columns round. */
  private static RowsWithHoles holed(GroupedRows rows, double chance, int direction) {
    int p = rows.columns();
    SplittableRandom random = new SplittableRandom(11);
    boolean[][] missing = new boolean[rows.rows()][p];
    for (boolean[] row : missing) {
      for (int j = 0; j < p; j++) {
        row[j] = random.nextDouble() < chance;
      }
    }
    RowsWithHoles.Builder builder = RowsWithHoles.builder(p, rows.groups());
    for (int r = 0; r < rows.rows(); r++) {
      int i = direction > 0 ? r : rows.rows() - 1 - r;
      Map<Integer, Double> cells = new HashMap<>();
      for (int j = 0; j < p; j++) {
        if (!missing[i][j]) {
          cells.put(direction > 0 ? j : p - 1 - j, rows.value(i, j));
        }
      }
      builder.add(rows.group(i), i, cells);
    }
    return builder.build();
  }

  private static void same(SymmetricMatrix expected, SymmetricMatrix ours, double relative) {
    for (int i = 0; i < expected.size(); i++) {
      for (int j = 0; j < expected.size(); j++) {
        double unit = Math.sqrt(expected.get(i, i) * expected.get(j, j));
        assertEquals(expected.get(i, j), ours.get(i, j), relative * unit);
      }
    }
  }
}
