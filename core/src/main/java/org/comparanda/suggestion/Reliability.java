package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.statistics.Proportion;
import org.comparanda.statistics.discriminant.Shares;

/** Sets the largest shares of held-out animals against how often they were right. */
final class Reliability {
  /** Where bands begin; finer near 1, where answers are given. */
  private static final List<Double> STARTS = List.of(0.0, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.99);

  private Reliability() {}

  /** The bands that hold an animal, lowest first; animals that could not be judged are in none. */
  static List<Trial.ShareBand> of(List<HeldOut> animals) {
    List<Trial.ShareBand> bands = new ArrayList<>();
    for (int b = 0; b < STARTS.size(); b++) {
      double from = STARTS.get(b);
      double below = b + 1 < STARTS.size() ? STARTS.get(b + 1) : Double.POSITIVE_INFINITY;
      List<HeldOut> inside =
          animals.stream().filter(a -> largest(a) >= from && largest(a) < below).toList();
      if (!inside.isEmpty()) {
        double mean = inside.stream().mapToDouble(Reliability::largest).average().orElseThrow();
        Proportion hits = TrialRun.hits(inside);
        bands.add(new Trial.ShareBand(from, Math.min(1, below), mean, hits));
      }
    }
    return bands;
  }

  /** Minus one where there are no shares: below every band. */
  private static double largest(HeldOut animal) {
    return animal.shares().<Double>fold((Shares s) -> s.of(s.largest()), none -> -1.0);
  }
}
