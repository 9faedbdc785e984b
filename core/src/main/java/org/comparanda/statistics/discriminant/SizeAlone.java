package org.comparanda.statistics.discriminant;

import java.util.Arrays;
import java.util.List;

/**
 * Size and nothing else: the mean of the logs, the one direction that proportions leave out
 * (Mosimann 1970, J. Am. Stat. Assoc. 65:930–945).
 */
public final class SizeAlone {
  private final Axes mean;

  private SizeAlone(Axes mean) {
    this.mean = mean;
  }

  /** Size of so many measurements, at least one. */
  public static SizeAlone of(int columns) {
    double[] axis = new double[columns];
    Arrays.fill(axis, 1.0 / columns);
    return new SizeAlone(new Axes(List.of(axis)));
  }

  /** The size of one row. */
  public double row(double... values) {
    return mean.row(values)[0];
  }

  /** Moments as those of the sizes would be, one column. */
  public GroupMoments moments(GroupMoments moments) {
    return mean.moments(moments);
  }
}
