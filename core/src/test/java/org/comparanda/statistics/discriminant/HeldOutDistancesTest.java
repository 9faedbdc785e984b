package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.comparanda.outside.OutsideSet;
import org.comparanda.statistics.NotEstimable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HeldOutDistancesTest {
  @ParameterizedTest
  @ValueSource(strings = {"iris", "crabs", "wolves_group", "midge", "mouse_t2_15"})
  void theClosedFormGivesWhatRefittingGives(String name) {
    GroupedRows rows = OutsideSet.named(name).rows();
    HeldOutDistances quick = value(HeldOutDistances.of(rows));
    for (int i = 0; i < rows.rows(); i++) {
      GroupDistances refitted =
          value(GroupDistances.of(GroupMoments.of(rows.withoutUnit(rows.unit(i)))));
      List<Double> ours = value(quick.of(i));
      for (int g = 0; g < rows.groups(); g++) {
        double expected = refitted.squared(g, rows.row(i));
        // relative 1e-9: the condition of the mouse distances is about 2e4
        assertEquals(expected, ours.get(g), 1e-9 * Math.max(1, expected));
      }
    }
  }

  @Test
  void anOnlyRowOfItsGroupIsNotEstimable() {
    GroupedRows rows =
        GroupedRows.builder(1, 2).add(0, 0, 1).add(0, 1, 2).add(0, 2, 4).add(1, 3, 9).build();
    assertInstanceOf(NotEstimable.class, value(HeldOutDistances.of(rows)).of(3));
  }

  @Test
  void rowsThatShareAUnitAreLeftToRefitting() {
    GroupedRows rows = GroupedRows.builder(1, 1).add(0, 0, 1).add(0, 0, 2).add(0, 1, 4).build();
    assertInstanceOf(NotEstimable.class, HeldOutDistances.of(rows));
  }
}
