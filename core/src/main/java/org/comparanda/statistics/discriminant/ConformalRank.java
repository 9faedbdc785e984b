package org.comparanda.statistics.discriminant;

/**
 * How unusual a row would be in one group, told by ranks alone.
 *
 * @param rows n, rows of the group without the new one
 * @param own part of the group's n + 1 rows, the new one among them, that lie at least as far from
 *     the mean of all n + 1: at least 1 / (n + 1). Exact if the group's animals are exchangeable
 * @param pooled the same among the rows of all groups, distances made comparable by m / (m − 1):
 *     "pooled, needs equal spread"
 */
public record ConformalRank(int group, int rows, double own, double pooled) {
  /** Whether the group has rows enough to be ruled out at the level by its own ranks. */
  public boolean canRuleOut(double level) {
    return (rows + 1) * (1 - level) >= 1 - 1e-12;
  }

  /**
   * Whether the group stays on the list that holds the true group with chance {@code level}: by its
   * own ranks where they can rule it out, otherwise by the pooled ones.
   */
  public boolean listed(double level) {
    return (canRuleOut(level) ? own : pooled) > 1 - level;
  }
}
