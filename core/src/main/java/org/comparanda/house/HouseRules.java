package org.comparanda.house;

import java.util.List;
import org.comparanda.statistics.Outcome;

/** Repository of the house's rules; the latest setting of each holds. */
public interface HouseRules {
  /** What holds now: as set last, or as it is until it is set. */
  String now(RuleName name);

  /** All rules as they hold now. */
  RulesInForce inForce();

  /** All settings ever made, oldest first. */
  List<HouseRule> all();

  /**
   * Sets a rule from now on. Refused where a keeper is named and this person is none, or the
   * content can't be read as what the rule needs.
   */
  Outcome<HouseRule> set(HouseRule rule);
}
