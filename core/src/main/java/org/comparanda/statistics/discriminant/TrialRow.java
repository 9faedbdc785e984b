package org.comparanda.statistics.discriminant;

import java.util.List;
import org.comparanda.statistics.Outcome;

/**
 * One held-out row, judged by all units but its own.
 *
 * @param row number of the offered row
 * @param unit the unit that was left out with it
 * @param group the group it truly is of
 * @param rowsLeft n of the fit that judged it
 * @param groupsLeft k of that fit; one less if it was the only unit of its group
 * @param shares what the method says
 * @param distances to the groups left, always by the plain spread
 */
public record TrialRow(
    int row,
    int unit,
    int group,
    int rowsLeft,
    int groupsLeft,
    Outcome<Shares> shares,
    Outcome<List<GroupDistance>> distances) {
  /** Whether the largest share is the true group's; an only unit of its group never hits. */
  public boolean hit() {
    return shares.fold(s -> s.of(group) > 0 && s.largest() == group, none -> false);
  }
}
