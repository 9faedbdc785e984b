package org.comparanda.statistics.discriminant;

/** How good shares are, once the truth is known. */
public final class ShareScore {
  /** Shares below this count as this, so that one sure miss stays finite. */
  private static final double SMALLEST_SHARE = 1e-15;

  /** Score of a row that could not be judged at all. */
  public static final double WORST_LOG = Math.log(SMALLEST_SHARE);

  /** All on one wrong group: 1² for it and 1² for the true one. */
  public static final double WORST_BRIER = 2;

  private ShareScore() {}

  /** Natural log of the true group's share. */
  public static double log(Shares shares, int truth) {
    return Math.log(Math.max(SMALLEST_SHARE, shares.of(truth)));
  }

  /** Σ(share − truth)². */
  public static double brier(Shares shares, int truth) {
    double sum = 0;
    for (int group = 0; group < shares.values().size(); group++) {
      double miss = shares.of(group) - (group == truth ? 1 : 0);
      sum += miss * miss;
    }
    return sum;
  }
}
