package org.comparanda.statistics.discriminant;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** The ways to tell groups apart that are offered. */
public final class Discriminants {
  private static final double FEW_ROWS = 10;

  private Discriminants() {}

  /** Every method with its usual settings. */
  public static List<Discriminant> all() {
    return List.of(
        new Linear(),
        new Predictive(),
        new ShrunkPooled(),
        new ShrunkPerGroup(),
        new Quadratic(),
        regularised(),
        nearest(),
        Forest.withDefaults());
  }

  /**
   * The method by rule, so that anyone can foresee it: shrunk-pooled where n − k &lt; 3p, otherwise
   * predictive where a group has fewer than 10 rows, otherwise linear. To be asked of the whole
   * set, so that one trial has one method.
   */
  public static Discriminant automatic(GroupedRows rows) {
    GroupMoments moments = GroupMoments.of(rows);
    if (moments.degreesOfFreedom() < 3 * rows.columns()) {
      return new ShrunkPooled();
    }
    for (int g = 0; g < rows.groups(); g++) {
      if (moments.count(g) > 0 && moments.count(g) < FEW_ROWS) {
        return new Predictive();
      }
    }
    return new Linear();
  }

  /** Regularised, its two pulls chosen by leaving every unit out in turn. */
  public static Discriminant regularised() {
    return new Tuned(
        DoubleStream.of(0.1, 0.5, 0.9, 1)
            .boxed()
            .flatMap(w -> Stream.of(0.0, 0.1, 0.5).map(d -> (Discriminant) new Regularised(w, d)))
            .toList());
  }

  /** Nearest neighbours on standardised columns, their number chosen likewise. */
  public static Discriminant nearest() {
    return new Tuned(
        Stream.of(5, 3, 1, 9)
            .map(k -> (Discriminant) Nearest.withDefaults().withNeighbours(k))
            .toList());
  }
}
