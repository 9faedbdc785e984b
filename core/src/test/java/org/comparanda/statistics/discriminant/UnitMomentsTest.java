package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.comparanda.outside.OutsideSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitMomentsTest {
  /** The near-collinear set apart: there rounding alone is larger (condition about 1e9). */
  static Stream<String> names() {
    return OutsideSet.names().stream().filter(name -> !name.equals("mouse_t2_15"));
  }

  // 1e-10 absolute: the demand of the method; differences come from the order of sums only.
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void holdingOutExactlyIsRefitting(long seed) {
    int p = 1 + (int) (seed % 6);
    GroupedRows rows =
        SeededRows.of(seed, p, 2 + (int) (seed % 4), 40)
            .withSides(SeededRows.sides(seed, p, 8 + (int) (seed % 5)));
    sameAsRefitting("seed " + seed, rows, new Linear());
    sameAsRefitting("seed " + seed, rows, new Predictive());
  }

  @ParameterizedTest
  @MethodSource("names")
  void holdingOutExactlyIsRefittingOnOutsideSets(String name) {
    sameAsRefitting(name, OutsideSet.named(name).rows(), new Linear());
    sameAsRefitting(name, OutsideSet.named(name).rows(), new Predictive());
  }

  private static void sameAsRefitting(String what, GroupedRows rows, Discriminant method) {
    Priors priors = Priors.counts(rows);
    for (TrialRow row : Trial.of(rows, method, priors).rows()) {
      GroupedRows left = rows.withoutUnit(row.unit());
      double[] x = rows.row(row.row());
      Shares refit = value(method.fit(left, priors)).shares(x);
      for (int g = 0; g < rows.groups(); g++) {
        assertEquals(refit.of(g), value(row.shares()).of(g), 1e-10, what);
      }
      List<GroupDistance> distances = value(GroupDistances.of(GroupMoments.of(left))).to(x);
      List<GroupDistance> held = value(row.distances());
      assertEquals(distances.size(), held.size(), what);
      for (int i = 0; i < held.size(); i++) {
        assertEquals(distances.get(i).rows(), held.get(i).rows(), what);
        assertEquals(distances.get(i).typicality(), held.get(i).typicality(), 1e-10, what);
      }
      assertEquals(left.rows(), row.rowsLeft(), what);
    }
  }

  // Two animals in group 0, one in group 1: without the latter the group is gone.
  @Test
  void anOnlyAnimalOfItsGroupIsAMiss() {
    GroupedRows rows =
        GroupedRows.builder(1, 2)
            .add(0, 7, 1.0)
            .add(0, 8, 2.0)
            .add(0, 9, 4.0)
            .add(1, 10, 90.0)
            .build();
    TrialRow only = Trial.of(rows, new Linear(), Priors.equal(2)).rows().get(3);
    assertFalse(only.hit());
    assertEquals(1, only.groupsLeft());
    assertEquals(List.of(1.0, 0.0), value(only.shares()).values());
    assertEquals(1, value(only.distances()).size());
  }

  // By hand: group 0 holds 1, 2, 4 and 6 (two rows of unit 9). Without unit 9: 1 and 2, mean 1.5,
  // scatter 0.5; group 1 keeps 10 and 12, mean 11, scatter 2; W = 2.5 / 2 = 1.25.
  @Test
  void aUnitOfTwoRowsGoesOutWithBoth() {
    GroupedRows rows =
        GroupedRows.builder(1, 2)
            .add(0, 7, 1.0)
            .add(0, 8, 2.0)
            .add(0, 9, 4.0)
            .add(0, 9, 6.0)
            .add(1, 10, 10.0)
            .add(1, 11, 12.0)
            .build();
    GroupMoments left = UnitMoments.of(rows).without(9);
    assertEquals(1.5, left.mean(0)[0], 1e-15);
    assertEquals(1.25, value(left.pooledCovariance()).get(0, 0), 1e-14);
  }

  @Test
  void aSubsetOfColumnsIsRefittedExactly() {
    GroupedRows rows = SeededRows.of(31, 5, 3, 30).withSides(SeededRows.sides(31, 5, 12));
    GroupMoments part = GroupMoments.of(rows).forColumns(3, 0);
    GroupMoments refit = GroupMoments.of(rows.forColumns(3, 0));
    assertEquals(refit.scatter(), part.scatter());
    assertEquals(value(refit.spread()), value(part.spread()));
  }

  // By hand: d = 0.2 and -0.4 five times each: sum d2 = 5 (0.04 + 0.16) = 1; W_side = 1 / 20; a
  // single side has W + 1/40.
  @Test
  void aSingleSideHasHalfTheSpreadBetweenSidesOnTop() {
    SidePairs.Builder sides = SidePairs.builder(1);
    for (int u = 0; u < 5; u++) {
      sides.add(u, 0.2).add(100 + u, -0.4);
    }
    GroupedRows rows =
        GroupedRows.builder(1, 1).add(0, 0, 1.0).add(0, 1, 2.0).add(0, 2, 3.0).build();
    GroupMoments withSides = GroupMoments.of(rows.withSides(sides.build()));
    assertEquals(1 + 1 / 40.0, value(withSides.spread()).get(0, 0), 1e-14);
    assertEquals(1, value(withSides.pooledCovariance()).get(0, 0), 1e-14);
    GroupMoments ownOut = UnitMoments.of(rows.withSides(sides.build())).without(0);
    assertEquals(9, ownOut.sidePairs());
    assertFalse(ownOut.judgesOneSide());
  }

  @Test
  void fewerRowsThanMeasurementsAreNotEstimable() {
    GroupedRows rows =
        GroupedRows.builder(2, 2).add(0, 0, 1, 2).add(0, 1, 2, 1).add(1, 2, 5, 5).build();
    assertTrue(new Linear().fit(rows, Priors.equal(2)).value().isEmpty());
  }

  @Test
  void aMeasurementThatRepeatsAnotherIsNotEstimable() {
    GroupedRows.Builder builder = GroupedRows.builder(2, 1);
    for (int i = 0; i < 9; i++) {
      builder.add(0, i, Math.sin(i), 3 * Math.sin(i) + 1);
    }
    assertTrue(new Linear().fit(builder.build(), Priors.equal(1)).value().isEmpty());
  }
}
