package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.comparanda.outside.OutsideSet;
import org.comparanda.statistics.NotEstimable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every offered method promises. */
class DiscriminantContractTest {
  private static final OutsideSet SET = OutsideSet.named("mouse_t2_5");
  private static final GroupedRows ROWS = SET.rows();
  private static final Priors PRIORS = new Priors("a list", List.of(0.5, 0.2, 0.3));

  static List<Discriminant> every() {
    return Discriminants.all();
  }

  @ParameterizedTest
  @MethodSource("every")
  void sharesSumToOne(Discriminant method) {
    DiscriminantModel model = value(method.fit(ROWS, PRIORS));
    for (int i = 0; i < ROWS.rows(); i++) {
      Shares shares = model.shares(ROWS.row(i));
      double sum = shares.values().stream().mapToDouble(Double::doubleValue).sum();
      assertEquals(1, sum, 1e-12); // rounding of three terms
      assertTrue(shares.values().stream().allMatch(s -> s >= 0 && s <= 1));
    }
  }

  @ParameterizedTest
  @MethodSource("every")
  void orderOfRowsDoesNotMatter(Discriminant method) {
    GroupedRows.Builder reversed = GroupedRows.builder(ROWS.columns(), ROWS.groups());
    for (int i = ROWS.rows() - 1; i >= 0; i--) {
      reversed.add(ROWS.group(i), ROWS.unit(i), ROWS.row(i));
    }
    same(method, ROWS, reversed.build(), new int[] {0, 1, 2, 3, 4}, new double[] {1, 1, 1, 1, 1});
  }

  @ParameterizedTest
  @MethodSource("every")
  void orderOfMeasurementsDoesNotMatter(Discriminant method) {
    int[] order = {3, 0, 4, 2, 1};
    same(method, ROWS, ROWS.forColumns(order), order, new double[] {1, 1, 1, 1, 1});
  }

  @ParameterizedTest
  @MethodSource("every")
  void millimetresOrCentimetresGiveTheSameAnswer(Discriminant method) {
    double[] factors = {0.1, 1, 25.4, 0.1, 1};
    same(method, ROWS, SET.scaled(factors), new int[] {0, 1, 2, 3, 4}, factors);
  }

  @ParameterizedTest
  @MethodSource("every")
  void fittingTwiceGivesTheSameDigits(Discriminant method) {
    DiscriminantModel once = value(method.fit(ROWS, PRIORS));
    DiscriminantModel again = value(method.fit(ROWS, PRIORS));
    for (int i = 0; i < ROWS.rows(); i++) {
      assertEquals(once.shares(ROWS.row(i)), again.shares(ROWS.row(i)));
    }
  }

  @ParameterizedTest
  @MethodSource("every")
  void tooFewRowsAreNotEstimable(Discriminant method) {
    GroupedRows two =
        GroupedRows.builder(5, 3).add(0, 0, ROWS.row(0)).add(1, 1, ROWS.row(40)).build();
    assertInstanceOf(NotEstimable.class, method.fit(two, PRIORS));
  }

  @ParameterizedTest
  @MethodSource("every")
  void aGroupWithoutRowsHasNoShare(Discriminant method) {
    GroupedRows.Builder four = GroupedRows.builder(5, 4);
    for (int i = 0; i < ROWS.rows(); i++) {
      four.add(ROWS.group(i) == 0 ? 0 : ROWS.group(i) + 1, ROWS.unit(i), ROWS.row(i));
    }
    Shares shares = value(method.fit(four.build(), Priors.equal(4))).shares(ROWS.row(3));
    assertEquals(0, shares.of(1), 0);
    assertEquals(1, shares.values().stream().mapToDouble(Double::doubleValue).sum(), 1e-12);
  }

  @ParameterizedTest
  @MethodSource("every")
  void aGroupWithoutPriorHasNoShare(Discriminant method) {
    Priors without = new Priors("set aside", List.of(0.5, 0.0, 0.5));
    DiscriminantModel model = value(method.fit(ROWS, without));
    for (int i = 0; i < ROWS.rows(); i++) {
      assertEquals(0, model.shares(ROWS.row(i)).of(1), 0);
    }
  }

  @ParameterizedTest
  @MethodSource("every")
  void onlyGroupsWithoutPriorAreNotEstimable(Discriminant method) {
    GroupedRows withoutOne = ROWS.onlyGroup(0);
    assertInstanceOf(
        NotEstimable.class, method.fit(withoutOne, new Priors("others", List.of(0.0, 0.5, 0.5))));
  }

  // 1e-8: two orders of summation, condition of W about 1e4.
  private static void same(
      Discriminant method, GroupedRows rows, GroupedRows other, int[] order, double[] factors) {
    DiscriminantModel model = value(method.fit(rows, PRIORS));
    DiscriminantModel changed = value(method.fit(other, PRIORS));
    for (int i = 0; i < rows.rows(); i++) {
      double[] x = rows.row(i);
      double[] y =
          IntStream.range(0, x.length).mapToDouble(j -> x[order[j]] * factors[j]).toArray();
      for (int g = 0; g < rows.groups(); g++) {
        assertEquals(model.shares(x).of(g), changed.shares(y).of(g), 1e-8, method.name());
      }
    }
  }
}
