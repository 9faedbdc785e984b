package org.comparanda.statistics.agreement;

/** How much two categories i and j of k count as agreeing, 1 for the same one. */
public enum Weights {
  /** 1 for the same category, 0 for another. */
  NONE {
    @Override
    double of(int i, int j, int k) {
      return i == j ? 1 : 0;
    }
  },
  /** 1 − |i − j|/(k − 1). */
  LINEAR {
    @Override
    double of(int i, int j, int k) {
      return 1 - Math.abs(i - j) / (k - 1.0);
    }
  },
  /** 1 − (i − j)²/(k − 1)². */
  QUADRATIC {
    @Override
    double of(int i, int j, int k) {
      return 1 - Math.pow((i - j) / (k - 1.0), 2);
    }
  };

  abstract double of(int i, int j, int k);
}
