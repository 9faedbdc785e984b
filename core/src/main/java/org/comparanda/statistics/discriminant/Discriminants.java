package org.comparanda.statistics.discriminant;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** The ways to tell groups apart that are offered. */
public final class Discriminants {
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
