package org.comparanda.gui.houserules;

import java.util.List;
import org.comparanda.house.RuleName;

/**
 * A rule as it holds.
 *
 * @param name in words
 * @param does one sentence: what it does
 * @param value what it says now, in the person's notation
 * @param untilSet what it says while nobody set it
 * @param unit what the value counts; empty where it counts nothing
 * @param who who set it last; says so where nobody did
 * @param when empty while nobody set it
 * @param history every setting, the newest first, in words
 */
public record RuleLine(
    RuleName rule,
    String name,
    String does,
    String value,
    String untilSet,
    String unit,
    String who,
    String when,
    List<String> history) {
  public RuleLine {
    history = List.copyOf(history);
  }
}
