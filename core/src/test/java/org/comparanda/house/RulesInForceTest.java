package org.comparanda.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.comparanda.bone.ElementKey;
import org.comparanda.capture.PassRules;
import org.comparanda.statistics.Outcome;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.suggestion.Method;
import org.comparanda.suggestion.Priors;
import org.comparanda.suggestion.SetAside;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RulesInForceTest {
  private static RulesInForce with(RuleName name, String content) {
    return RulesInForce.withDefaults().with(name, content).value().orElseThrow();
  }

  private static String refused(Outcome<RulesInForce> outcome) {
    return outcome.fold(rules -> "taken: " + rules, none -> none.reason() + " " + none.remedy());
  }

  @Test
  void aHouseThatSetNothingComparesAsEverybodyDoes() {
    assertEquals(ComparisonRules.withDefaults(), RulesInForce.withDefaults().comparison());
    assertEquals(PassRules.withDefaults(), RulesInForce.withDefaults().passes());
  }

  @ParameterizedTest
  @EnumSource(RuleName.class)
  void whatHoldsUntilARuleIsSetCanBeSet(RuleName name) {
    assertEquals(name.untilSet(), with(name, name.untilSet()).now(name));
  }

  @Test
  void whatIsSetReachesTheComparison() {
    assertEquals(0.9, with(RuleName.ONE_SHARE, "0.9").comparison().thresholds().oneShare());
    assertEquals(7, with(RuleName.MOST_NAMED, "7").comparison().thresholds().mostNamed());
    assertEquals(Priors.shelf(), with(RuleName.PRIORS, "shelf").comparison().priors());
    assertEquals(
        Map.of(
            new ElementKey("humerus"), Method.SHRUNK_POOLED,
            new ElementKey("femur"), Method.FOREST),
        with(RuleName.METHODS, "humerus=shrunk-pooled; femur=forest").comparison().houseChoices());
    assertEquals(
        List.of(new SetAside(new TaxonName("Bos taurus"), "came in 1820")),
        with(RuleName.SET_ASIDE, "Bos taurus = came in 1820").comparison().setAside());
    assertEquals(
        PassRules.Repeats.ALLOWED, with(RuleName.BACK_TO_BACK_TAKES, "allowed").passes().repeats());
  }

  @ParameterizedTest
  @CsvSource({
    "ONE_SHARE, 1.5, a number from 0.5 to 0.9999",
    "ONE_SHARE, a lot, a number from 0.5 to 0.9999",
    "ONE_SHARE, 1e-1, a number from 0.5 to 0.9999",
    "NOTHING_FITS, -0.01, a number from 1.0E-4 to 0.2",
    "MOST_NAMED, 2.5, a whole number from 2 to 20",
    "SECOND_LOOK_EVERY, 0, a whole number from 1 to 9999",
    "PRIORS, mine, equal or shelf",
    "METHODS, humerus=magic, none or ELEMENT=one of auto",
    "SET_ASIDE, Bos taurus, none or TAXON=REASON"
  })
  void aBadValueIsRefusedWithWhatIsAllowed(RuleName name, String content, String allowed) {
    String said = refused(RulesInForce.withDefaults().with(name, content));
    assertTrue(said.startsWith(name.word() + ": \"" + content + "\" is not " + allowed), said);
  }

  @Test
  void aPoorFitMustFitBetterThanNothing() {
    String said = refused(RulesInForce.withDefaults().with(RuleName.NOTHING_FITS, "0.06"));
    assertEquals(
        "nothing-fits would be 0.06, above poor-fit, 0.05. What fits poorly must fit better than"
            + " nothing: set the other one first.",
        said);
  }
}
