package org.comparanda.suggestion;

/** How the values of a set become the numbers that are compared. */
enum Coordinates {
  /** The values as they are. */
  WHOLE {
    @Override
    double[] of(double... values) {
      return values.clone();
    }

    @Override
    int count(int measurements) {
      return measurements;
    }

    @Override
    int fewest() {
      return 1;
    }
  },
  /**
   * p − 1 orthonormal contrasts, each the mean of those before against the next, scaled to length
   * one (Helmert's); any orthonormal basis gives the same D².
   */
  CONTRASTS {
    @Override
    double[] of(double... values) {
      double[] contrasts = new double[values.length - 1];
      double sum = 0;
      for (int i = 1; i < values.length; i++) {
        sum += values[i - 1];
        contrasts[i - 1] = (sum / i - values[i]) * Math.sqrt(i / (i + 1.0));
      }
      return contrasts;
    }

    @Override
    int count(int measurements) {
      return measurements - 1;
    }

    @Override
    int fewest() {
      return 3;
    }
  };

  abstract double[] of(double... values);

  /** Numbers compared where so many measurements were taken. */
  abstract int count(int measurements);

  /** Measurements needed. */
  abstract int fewest();

  boolean possibleWith(int measurements) {
    return measurements >= fewest();
  }

  static Coordinates on(Scale scale) {
    return scale == Scale.PROPORTIONS ? CONTRASTS : WHOLE;
  }
}
