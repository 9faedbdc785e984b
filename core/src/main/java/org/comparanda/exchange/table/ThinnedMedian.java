package org.comparanda.exchange.table;

import java.util.Arrays;
import java.util.OptionalDouble;

/** Median of a stream of numbers in little memory: of a long stream every second one is dropped. */
final class ThinnedMedian {
  private static final int KEPT = 1 << 14;

  private double[] values = new double[16];
  private int kept;
  private long seen;
  private long everyNth = 1;

  void add(double value) {
    if (seen % everyNth == 0) {
      keep(value);
    }
    seen++;
  }

  private void keep(double value) {
    if (kept == KEPT) { // every second one goes, from now on half as many come
      for (int i = 0; i < KEPT / 2; i++) {
        values[i] = values[2 * i];
      }
      kept = KEPT / 2;
      everyNth *= 2;
    }
    if (kept == values.length) {
      values = Arrays.copyOf(values, 2 * kept);
    }
    values[kept++] = value;
  }

  /** The upper median; empty when nothing was added. */
  OptionalDouble value() {
    double[] sorted = Arrays.copyOf(values, kept);
    Arrays.sort(sorted);
    return kept == 0 ? OptionalDouble.empty() : OptionalDouble.of(sorted[kept / 2]);
  }
}
