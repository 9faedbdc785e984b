package org.comparanda.demo;

import java.util.SplittableRandom;

/**
 * Random numbers that are the same on every Java: whole random bits by {@link SplittableRandom},
 * everything else by exact arithmetic and {@link StrictMath}.
 */
final class Draws {
  private final SplittableRandom random;

  private Draws(SplittableRandom random) {
    this.random = random;
  }

  static Draws seeded(long seed) {
    return new Draws(new SplittableRandom(seed));
  }

  /** An independent stream, so that a change in one animal leaves the others as they are. */
  Draws split() {
    return new Draws(random.split());
  }

  /** Uniform in [0, 1). */
  double uniform() {
    return (random.nextLong() >>> 11) * 0x1.0p-53;
  }

  boolean chance(double probability) {
    return uniform() < probability;
  }

  /** Whole number in [0, bound); the small bias of the remainder does not matter here. */
  int below(int bound) {
    return (int) ((random.nextLong() >>> 1) % bound);
  }

  /** Standard normal, by the method of Box and Muller, cut at 2.5. */
  double normal() {
    double value;
    do {
      double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - uniform()));
      value = radius * StrictMath.cos(2 * StrictMath.PI * uniform());
    } while (value > 2.5 || value < -2.5);
    return value;
  }
}
