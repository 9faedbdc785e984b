package org.comparanda.statistics.robust;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Subsets of rows to start from: all where they are few, otherwise seeded random ones. */
final class StartingPoints {
  private StartingPoints() {}

  static List<int[]> of(int n, int size, MinimumCovarianceDeterminant options) {
    return subsets(n, size) <= options.allSubsets()
        ? every(n, size)
        : random(n, size, options.starts(), new SplittableRandom(options.seed()));
  }

  private static double subsets(int n, int size) {
    double count = 1;
    for (int i = 0; i < size; i++) {
      count = count * (n - i) / (i + 1);
    }
    return count;
  }

  private static List<int[]> every(int n, int size) {
    List<int[]> all = new ArrayList<>();
    int[] now = new int[size];
    for (int i = 0; i < size; i++) {
      now[i] = i;
    }
    while (true) {
      all.add(now.clone());
      int last = size - 1;
      while (last >= 0 && now[last] == n - size + last) {
        last--;
      }
      if (last < 0) {
        return all;
      }
      now[last]++;
      for (int i = last + 1; i < size; i++) {
        now[i] = now[i - 1] + 1;
      }
    }
  }

  private static List<int[]> random(int n, int size, int starts, SplittableRandom random) {
    List<int[]> some = new ArrayList<>();
    for (int s = 0; s < starts; s++) {
      some.add(random.ints(0, n).distinct().limit(size).toArray());
    }
    return some;
  }
}
