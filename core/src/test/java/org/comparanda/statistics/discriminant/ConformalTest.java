package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.comparanda.outside.OutsideSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConformalTest {
  private static final GroupedRows FIVE =
      GroupedRows.builder(1, 2)
          .add(0, 0, 0.0)
          .add(0, 1, 2.0)
          .add(0, 2, 4.0)
          .add(1, 3, 20.0)
          .add(1, 4, 22.0)
          .build();

  // By hand, x = 10. With group 0: 0, 2, 4, 10, mean 4, squares 16, 4, 0, 36, times 4/3: 21.3, 5.3,
  // 0,
  // 48; group 1 about 21: 1, 1, times 2. The farthest of 4 and of 6. With group 1: 20, 22, 10, mean
  // 17.3: squares 7.1, 21.8, 53.8: the farthest of 3, and of 6 when pooled (80.7 against 6 at
  // most).
  @Test
  void ranksByHand() {
    List<ConformalRank> ranks = value(Conformal.of(FIVE).ranks(10.0));
    assertEquals(new ConformalRank(0, 3, 1 / 4.0, 1 / 6.0, 6), ranks.get(0));
    assertEquals(new ConformalRank(1, 2, 1 / 3.0, 1 / 6.0, 6), ranks.get(1));
  }

  // x = 2 is the mean of group 0 before and after: all lie at least as far.
  @Test
  void theMeanItselfIsTheMostUsual() {
    assertEquals(new ConformalRank(0, 3, 1, 1, 6), value(Conformal.of(FIVE).ranks(2.0)).get(0));
  }

  @Test
  void nineteenAnimalsCanRuleOutAtFiveInAHundredAndEighteenCannot() {
    assertTrue(new ConformalRank(0, 19, 0.05, 1, 50).canRuleOut(0.95));
    assertFalse(new ConformalRank(0, 18, 0.05, 1, 50).canRuleOut(0.95));
    assertFalse(new ConformalRank(0, 19, 0.05, 1, 50).listed(0.95));
    assertTrue(new ConformalRank(0, 18, 1 / 19.0, 0.2, 50).listed(0.95));
    assertFalse(new ConformalRank(0, 18, 1 / 19.0, 0.02, 50).listed(0.95));
  }

  // The ranks of 20 exchangeable rows are uniform on 1/20 ... 20/20: of 400 new rows at most 1/20
  // and
  // chance have the smallest; 4 standard errors of that are 0.044.
  @Test
  void exchangeableRowsAreMissedAsOftenAsPromised() {
    SplittableRandom random = new SplittableRandom(4);
    int missed = 0;
    for (int set = 0; set < 400; set++) {
      GroupedRows.Builder builder = GroupedRows.builder(2, 1);
      for (int i = 0; i < 19; i++) {
        builder.add(0, i, random.nextDouble(), Math.exp(SeededRows.normal(random)));
      }
      double own =
          value(
                  Conformal.of(builder.build())
                      .ranks(random.nextDouble(), Math.exp(SeededRows.normal(random))))
              .get(0)
              .own();
      missed += own <= 0.05 ? 1 : 0;
    }
    assertEquals(0.05, missed / 400.0, 0.044);
  }

  // Outside data in logs, every animal held out: the list holds the true group in at least 93 of
  // 100 and is
  // no longer on average than what was asked of each set.
  @ParameterizedTest
  @CsvSource({"penguins, 1.10", "crabs, 1.20", "iris, 1.50"})
  void theListKeepsItsPromise(String name, double longest) {
    GroupedRows rows = HandbookFactsTest.logs(OutsideSet.named(name).rows());
    GroupedRows lengths = name.equals("penguins") ? rows.forColumns(0, 1, 2) : rows;
    Coverage coverage = value(Coverage.of(lengths, 0.95));
    assertTrue(coverage.held().rate().orElseThrow() >= 0.93, coverage.toString());
    assertTrue(coverage.meanLength() <= longest, coverage.toString());
  }
}
