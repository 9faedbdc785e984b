package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class WithoutSizeTest {
  @Test
  void aBoneTwiceAsLargeHasTheSameProportions() {
    WithoutSize proportions = value(WithoutSize.proportions(3));
    double two = Math.log(2);
    assertArrayEquals(
        proportions.row(1.5, 2.5, 4), proportions.row(1.5 + two, 2.5 + two, 4 + two), 1e-14);
  }

  // Another basis: (a - b)/sqrt 2 and (a + b - 2c)/sqrt 6. D2 is the same but for rounding, 1e-9.
  @Test
  void anyBasisGivesTheSameDistances() {
    GroupedRows rows = SeededRows.of(8, 3, 3, 40);
    GroupedRows.Builder helmert = GroupedRows.builder(2, 3);
    for (int i = 0; i < rows.rows(); i++) {
      helmert.add(rows.group(i), rows.unit(i), helmert(rows.row(i)));
    }
    GroupDistances expected = value(GroupDistances.of(GroupMoments.of(helmert.build())));
    WithoutSize proportions = value(WithoutSize.proportions(3));
    GroupDistances ours = value(GroupDistances.of(GroupMoments.of(proportions.rows(rows))));
    for (int i = 0; i < rows.rows(); i++) {
      for (int g = 0; g < 3; g++) {
        double d2 = expected.squared(g, helmert(rows.row(i)));
        assertEquals(d2, ours.squared(g, proportions.row(rows.row(i))), 1e-9 * Math.max(1, d2));
      }
    }
  }

  @Test
  void momentsTurnAsTheRowsDo() {
    GroupedRows rows = SeededRows.of(9, 4, 2, 30).withSides(SeededRows.sides(9, 4, 12));
    WithoutSize adjusted = value(WithoutSize.adjusted(GroupMoments.of(rows)));
    GroupMoments ofRows = GroupMoments.of(adjusted.rows(rows));
    GroupMoments turned = adjusted.moments(GroupMoments.of(rows));
    for (int i = 0; i < 3; i++) {
      assertEquals(ofRows.mean(1)[i], turned.mean(1)[i], 1e-12);
      for (int j = 0; j < 3; j++) {
        assertEquals(value(ofRows.spread()).get(i, j), value(turned.spread()).get(i, j), 1e-12);
      }
    }
  }

  // Growth along (1, 2, 3): the longest axis within groups is that up to the noise of 0.001 / 1.
  @Test
  void growthWithinGroupsGoesOut() {
    SplittableRandom random = new SplittableRandom(3);
    GroupedRows.Builder builder = GroupedRows.builder(3, 1);
    for (int i = 0; i < 50; i++) {
      double size = SeededRows.normal(random);
      builder.add(
          0,
          i,
          size + 0.001 * SeededRows.normal(random),
          2 * size + 0.001 * SeededRows.normal(random),
          3 * size + 0.001 * SeededRows.normal(random));
    }
    WithoutSize adjusted = value(WithoutSize.adjusted(GroupMoments.of(builder.build())));
    assertArrayEquals(new double[2], adjusted.row(1, 2, 3), 0.002);
  }

  @Test
  void twoMeasurementsHaveNoProportionsToCompare() {
    assertTrue(WithoutSize.proportions(2).value().isEmpty());
  }

  private static double[] helmert(double[] x) {
    return new double[] {(x[0] - x[1]) / Math.sqrt(2), (x[0] + x[1] - 2 * x[2]) / Math.sqrt(6)};
  }
}
