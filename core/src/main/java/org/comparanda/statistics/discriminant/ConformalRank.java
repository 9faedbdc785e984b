package org.comparanda.statistics.discriminant;

/**
 * How unusual a row would be in one group, told by ranks alone.
 *
 * @param rows n, rows of the group without the new one
 * @param own part of the group's n + 1 rows, the new one among them, that lie at least as far from
 *     the mean of all n + 1: at least 1 / (n + 1). Exact if the group's animals are exchangeable
 * @param pooled the same among the rows of all groups, distances made comparable by m / (m − 1):
 *     "pooled, needs equal spread"
 * @param compared rows that the pooled rank is among, the new one included: it is at least 1 /
 *     compared
 */
public record ConformalRank(int group, int rows, double own, double pooled, int compared) {
  /** Whether the group has rows enough to be ruled out at the level by its own ranks. */
  public boolean canRuleOut(double level) {
    return (rows + 1) * (1 - level) >= 1 - 1e-12;
  }

  /**
   * The rank where it has to serve as typicality: the group's own where that can go below the bar,
   * otherwise the pooled one.
   */
  public double typicality(double bar) {
    return ranksOwn(bar) ? own : pooled;
  }

  /** The smallest value that {@link #typicality} can take. */
  public double lowest(double bar) {
    return 1.0 / (ranksOwn(bar) ? rows + 1 : compared);
  }

  private boolean ranksOwn(double bar) {
    return (rows + 1) * bar > 1;
  }

  /**
   * Whether the group stays on the list that holds the true group with chance {@code level}: by its
   * own ranks where they can rule it out, otherwise by the pooled ones.
   */
  public boolean listed(double level) {
    return (canRuleOut(level) ? own : pooled) > 1 - level;
  }
}
