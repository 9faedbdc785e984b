package org.comparanda.statistics.discriminant;

import java.util.List;

/** A fitted way to tell groups apart. Keeps what it needs, not more; never changes. */
public interface DiscriminantModel {
  /** Shares of the groups for one row of as many values as the columns fitted, in their order. */
  Shares shares(double... row);

  /**
   * How strongly the covariance was pulled towards a simpler one, 0 (not) to 1 (wholly): one number
   * for a pooled covariance, one for each group for those of the groups; empty for a method that
   * does not pull.
   */
  default List<Double> shrinkage() {
    return List.of();
  }
}
