package org.comparanda.statistics.discriminant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.comparanda.outside.OutsideSet;
import org.comparanda.statistics.Outcome;
import org.junit.jupiter.api.Test;

class ConformalWithHolesTest {
  private static final Maximisation EM = Maximisation.withDefaults();

  // Without holes maximisation is the plain fit, so the ranks are those of the plain ones: counts.
  @Test
  void withoutHolesTheyAreThePlainRanks() {
    GroupedRows iris = OutsideSet.named("iris").rows();
    for (int i = 0; i < iris.rows(); i += 10) {
      GroupedRows others = iris.withoutUnit(iris.unit(i));
      assertEquals(
          value(Conformal.of(others).ranks(iris.row(i))),
          value(ranks(holed(others, 0)).ranks(iris.row(i))));
    }
  }

  // The promise itself: a member's own rank is at most 0.1 in at most 1 of 10 cases. 0.06: twice
  // the
  // standard error of a rate of 0.1 among 100.
  @Test
  void aMemberIsRarelyRankedFarOutThoughTheShelfHasHoles() {
    GroupedRows crabs = OutsideSet.named("crabs").rows().forColumns(0, 1, 3);
    RowsWithHoles holed = holed(crabs, 0.4);
    int far = 0;
    for (int i = 0; i < crabs.rows(); i += 2) {
      int group = crabs.group(i);
      RowsWithHoles others = holed.withoutUnit(i);
      far += value(ranks(others).ranks(crabs.row(i))).get(group).own() <= 0.1 ? 1 : 0;
    }
    assertTrue(far / 100.0 <= 0.16, far + " of 100");
    assertTrue(far > 0, "ranks that never are small say nothing");
  }

  private static ConformalWithHoles ranks(RowsWithHoles rows) {
    return ConformalWithHoles.of(rows, EM, value(EM.fit(rows)));
  }

  private static RowsWithHoles holed(GroupedRows rows, double chance) {
    SplittableRandom random = new SplittableRandom(5);
    RowsWithHoles.Builder builder = RowsWithHoles.builder(rows.columns(), rows.groups());
    for (int i = 0; i < rows.rows(); i++) {
      Map<Integer, Double> cells = new HashMap<>();
      for (int j = 0; j < rows.columns(); j++) {
        if (random.nextDouble() >= chance) {
          cells.put(j, rows.value(i, j));
        }
      }
      builder.add(rows.group(i), i, cells);
    }
    return builder.build();
  }

  private static <T> T value(Outcome<T> outcome) {
    return outcome.value().orElseThrow();
  }
}
