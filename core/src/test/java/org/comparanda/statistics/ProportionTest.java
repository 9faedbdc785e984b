package org.comparanda.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.junit.jupiter.api.Test;

class ProportionTest {
  // R 4.2.2: prop.test(correct = FALSE), binom.test; i_binomial.csv. 1e-10 absolute: prop.test and
  // binom.test are closed forms and beta quantiles, both good to about 1e-13.
  @Test
  void intervalsOfARateAreThoseOfR() {
    OutsideCheck check =
        OutsideCheck.named(
            "binomial", "R 4.2.2 prop.test(correct=FALSE), binom.test: expected/i_binomial.csv");
    for (OutsideTable.Row row : OutsideTable.read("expected/i_binomial.csv").rows()) {
      Proportion hits = new Proportion(row.count("hits"), row.count("n"));
      double level = row.number("level");
      String what = hits.hits() + " of " + hits.tries() + " at " + level + ", ";
      Interval wilson = hits.wilson(level);
      Interval exact = hits.exact(level);
      check.absolute(what + "wilson lower", row.number("wilson_lo"), wilson.lower(), 1e-10);
      check.absolute(what + "wilson upper", row.number("wilson_hi"), wilson.upper(), 1e-10);
      check.absolute(what + "exact lower", row.number("clopper_pearson_lo"), exact.lower(), 1e-10);
      check.absolute(what + "exact upper", row.number("clopper_pearson_hi"), exact.upper(), 1e-10);
      check.absolute(
          what + "one-sided wilson",
          row.number("one_sided_lower_wilson"),
          hits.wilsonLower(level),
          1e-10);
      check.absolute(
          what + "one-sided exact",
          row.number("one_sided_lower_clopper_pearson"),
          hits.exactLower(level),
          1e-10);
    }
  }

  // All of n right: the exact lower limit is 0.05^(1/n); 0.05^(1/29) = 0.9018.
  @Test
  void twentyNineOfTwentyNineProveNineInTen() {
    assertEquals(Math.pow(0.05, 1 / 29.0), new Proportion(29, 29).exactLower(0.95), 1e-12);
    assertTrue(new Proportion(28, 28).exactLower(0.95) < 0.9);
    assertTrue(new Proportion(14, 14).exactLower(0.95) >= 0.8);
  }

  @Test
  void tenOfTenPassTheGateAndEightOfTenDoNot() {
    assertTrue(new Proportion(10, 10).wilson(0.95).lower() >= 0.70);
    assertTrue(new Proportion(8, 10).wilson(0.95).lower() < 0.70);
  }

  @Test
  void noTriesSayNothing() {
    assertEquals(new Interval(0, 1, 0.95), new Proportion(0, 0).wilson(0.95));
    assertEquals(new Interval(0, 1, 0.95), new Proportion(0, 0).exact(0.95));
    assertTrue(new Proportion(0, 0).rate().isEmpty());
  }
}
