package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.comparanda.outside.OutsideSet;
import org.junit.jupiter.api.Test;

class GroupDistancesTest {
  private static final OutsideSet CRABS = OutsideSet.named("crabs");
  private static final GroupMoments MOMENTS = GroupMoments.of(CRABS.rows());
  private static final GroupDistances DISTANCES = value(GroupDistances.of(MOMENTS));

  // 1e-9 relative to D2 of about 100: rounding with W of condition 1e4.
  @Test
  void partsOfTheMeasurementsSumToTheDistance() {
    double[] crab = CRABS.rows().row(17);
    for (int g = 0; g < 4; g++) {
      double sum = DISTANCES.contributions(g, crab).stream().mapToDouble(Contribution::part).sum();
      assertEquals(DISTANCES.squared(g, crab), sum, 1e-9 * sum);
    }
  }

  @Test
  void leavingOneMeasurementOutDropsTheDistanceAsPromised() {
    double[] crab = CRABS.rows().row(17);
    GroupDistances without = value(GroupDistances.of(MOMENTS.forColumns(0, 1, 3, 4)));
    double left = without.squared(2, crab[0], crab[1], crab[3], crab[4]);
    double drop = DISTANCES.contributions(2, crab).get(2).dropIfLeftOut();
    assertEquals(DISTANCES.squared(2, crab) - left, drop, 1e-9 * drop);
    assertTrue(drop > 0);
  }

  @Test
  void partsOfThePreferenceSumToHalfTheDifferenceOfDistances() {
    double[] crab = CRABS.rows().row(130);
    double sum = DISTANCES.preference(1, 3, crab).stream().mapToDouble(Double::doubleValue).sum();
    double expected = 0.5 * (DISTANCES.squared(3, crab) - DISTANCES.squared(1, crab));
    assertEquals(expected, sum, 1e-9 * Math.abs(expected));
  }

  // By hand: group 0 is 0, 2 (mean 1), group 1 is 10, 12 (mean 11): W = 4/2 = 2, n - k = 2, p = 1.
  // x = 4: D2 = 9/2 and 49/2; F = D2 * 2 * 2 / (3 * 1 * 2) = 3 and 49/3 on 1 and 2 degrees of
  // freedom; a tail of F(1, 2) is 1 - sqrt(F / (F + 2)).
  @Test
  void fourNumbersByHand() {
    GroupedRows rows =
        GroupedRows.builder(1, 2)
            .add(0, 0, 0.0)
            .add(0, 1, 2.0)
            .add(1, 2, 10.0)
            .add(1, 3, 12.0)
            .build();
    List<GroupDistance> ours = value(GroupDistances.of(GroupMoments.of(rows))).to(4.0);
    assertEquals(4.5, ours.get(0).squared(), 1e-14);
    assertEquals(24.5, ours.get(1).squared(), 1e-13);
    assertEquals(1 - Math.sqrt(3 / 5.0), ours.get(0).typicality(), 1e-14);
    assertEquals(1 - Math.sqrt(49 / 55.0), ours.get(1).typicality(), 1e-14);
  }

  // The same: predictive weights (1 + 1/2)^(-1/2) (1 + 2 D2 / (3 * 2))^(-3/2): 2.5^-1.5 against
  // (1 + 24.5/3)^-1.5; linear exp(-2.25) against exp(-12.25), that is 1 / (1 + e^-10).
  @Test
  void sharesByHand() {
    GroupedRows rows =
        GroupedRows.builder(1, 2)
            .add(0, 0, 0.0)
            .add(0, 1, 2.0)
            .add(1, 2, 10.0)
            .add(1, 3, 12.0)
            .build();
    Priors equal = Priors.equal(2);
    double near = Math.pow(2.5, -1.5);
    double far = Math.pow(27.5 / 3, -1.5);
    assertEquals(
        near / (near + far), value(new Predictive().fit(rows, equal)).shares(4.0).of(0), 1e-14);
    assertEquals(
        1 / (1 + Math.exp(-10)), value(new Linear().fit(rows, equal)).shares(4.0).of(0), 1e-14);
  }

  @Test
  void faintSharesKeepTheirDigits() {
    GroupedRows rows =
        GroupedRows.builder(1, 2)
            .add(0, 0, 0.0)
            .add(0, 1, 2.0)
            .add(1, 2, 40.0)
            .add(1, 3, 42.0)
            .build();
    Shares shares = value(new Linear().fit(rows, Priors.equal(2))).shares(-6.0);
    // D2 = 49/2 and 47^2/2: the ratio is exp(-(2209 - 49) / 4) = exp(-540), about 3e-235.
    assertEquals(Math.exp(-540), shares.of(1), 1e-12 * Math.exp(-540));
    assertEquals(1, shares.of(0), 0);
  }
}
