package org.comparanda.statistics.discriminant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.comparanda.outside.OutsideSet;
import org.comparanda.outside.OutsideTable;
import org.comparanda.statistics.NotEstimable;
import org.junit.jupiter.api.Test;

class PairedGainTest {
  private static PairedGain gain(GroupedRows rows, Discriminant one, Discriminant other) {
    return LinearOutsideTest.value(PairedGain.of(rows, one, other, Priors.equal(rows.groups())));
  }

  // scikit-learn 1.6.1: c_held_out_true.csv, plain against shrunk per class, wolves in four groups
  @Test
  void theGainOfPlainOverShrunkIsTheOutsideOne() {
    OutsideSet set = OutsideSet.named("wolves_group");
    double sum = 0;
    for (OutsideTable.Row row :
        OutsideTable.read("expected/c_held_out_true.csv").where("set", "wolves_group").rows()) {
      sum +=
          Math.log(Math.max(1e-15, row.number("plain_raw")))
              - Math.log(Math.max(1e-15, row.number("shrunk_raw")));
    }
    PairedGain gain = gain(set.rows(), new Linear(), new ShrunkPerGroup());
    assertEquals(25, gain.rows());
    assertEquals(sum / 25, gain.mean(), 1e-9); // nats; shares agree to 1e-12
    assertTrue(gain.clear());
  }

  @Test
  void aMethodGainsNothingOverItself() {
    GroupedRows rows = OutsideSet.named("midge").rows();
    assertEquals(new PairedGain(15, 0, 0), gain(rows, new Linear(), new Linear()));
    assertFalse(gain(rows, new Linear(), new Linear()).clear());
  }

  @Test
  void anOnlyAnimalOfItsGroupIsNotCounted() {
    GroupedRows.Builder rows = GroupedRows.builder(2, 3);
    GroupedRows midge = OutsideSet.named("midge").rows();
    for (int i = 0; i < midge.rows(); i++) {
      rows.add(midge.group(i), i, midge.row(i));
    }
    rows.add(2, 15, 1.3, 1.9);
    assertEquals(15, gain(rows.build(), new Linear(), new Predictive()).rows());
  }

  @Test
  void oneRowTellsNothing() {
    GroupedRows one = GroupedRows.builder(1, 1).add(0, 0, 3.0).build();
    assertInstanceOf(
        NotEstimable.class, PairedGain.of(one, new Linear(), new Predictive(), Priors.equal(1)));
  }
}
