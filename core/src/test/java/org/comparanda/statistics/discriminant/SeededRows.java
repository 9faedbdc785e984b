package org.comparanda.statistics.discriminant;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;

/** Sets of random rows for properties, the same for the same seed. */
final class SeededRows {
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  private SeededRows() {}

  static double normal(SplittableRandom random) {
    return NORMAL.inverseCumulativeProbability(random.nextDouble());
  }

  /** Units of one to three rows, correlated columns, groups of uneven size. */
  static GroupedRows of(long seed, int columns, int groups, int units) {
    SplittableRandom random = new SplittableRandom(seed);
    GroupedRows.Builder builder = GroupedRows.builder(columns, groups);
    for (int u = 0; u < units; u++) {
      int group = u < groups ? u : random.nextInt(groups);
      double size = normal(random);
      int rows = 1 + random.nextInt(3);
      double[] own = new double[columns];
      for (int j = 0; j < columns; j++) {
        own[j] = 5 + 0.7 * group * (j % 3) + size + 0.5 * normal(random);
      }
      for (int r = 0; r < rows; r++) {
        double[] x = own.clone();
        for (int j = 0; j < columns; j++) {
          x[j] += 0.2 * normal(random);
        }
        builder.add(group, u, x);
      }
    }
    return builder.build();
  }

  /** Left–right differences for the first {@code units} units. */
  static SidePairs sides(long seed, int columns, int units) {
    SplittableRandom random = new SplittableRandom(seed);
    SidePairs.Builder builder = SidePairs.builder(columns);
    for (int u = 0; u < units; u++) {
      double[] d = new double[columns];
      for (int j = 0; j < columns; j++) {
        d[j] = 0.3 * normal(random);
      }
      builder.add(u, d);
    }
    return builder.build();
  }
}
