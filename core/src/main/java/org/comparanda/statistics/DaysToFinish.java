package org.comparanda.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * How many more working days a pile takes, if days to come are like those of the log: days are
 * drawn from the log with replacement until the pile is done, 4,000 times; the limits are the 2.5
 * and 97.5 % points of those (nearest rank). A prediction interval for whole days; what changes
 * with the pile (it gets harder, people leave) is not in it.
 */
public final class DaysToFinish {
  private static final int RUNS = 4_000;
  private static final int FEWEST_DAYS = 5;
  private static final int MOST_DAYS = 100_000;

  private DaysToFinish() {}

  /**
   * A forecast.
   *
   * @param median of the runs, working days
   * @param days prediction interval, working days, level 0.95
   * @param from working days that it rests on
   */
  public record Forecast(double median, Interval days, int from) {}

  /**
   * The forecast.
   *
   * @param donePerDay what was done on each working day, at least 1 each
   * @param left what is left, at least 0
   * @param seed of the draws
   */
  public static Outcome<Forecast> of(List<Integer> donePerDay, int left, long seed) {
    if (donePerDay.size() < FEWEST_DAYS) {
      return Outcome.none(
          "A forecast needs " + FEWEST_DAYS + " working days; there are " + donePerDay.size() + ".",
          "Look again in a few days.");
    }
    if (donePerDay.stream().anyMatch(done -> done < 1)) {
      throw new IllegalArgumentException("On a working day something was done: " + donePerDay);
    }
    SplittableRandom draws = new SplittableRandom(seed);
    double[] days = new double[RUNS];
    for (int run = 0; run < RUNS; run++) {
      int rest = left;
      while (rest > 0 && days[run] < MOST_DAYS) {
        rest -= donePerDay.get(draws.nextInt(donePerDay.size()));
        days[run]++;
      }
    }
    Arrays.sort(days);
    return Outcome.of(
        new Forecast(
            rank(days, 0.5),
            new Interval(rank(days, 0.025), rank(days, 0.975), 0.95),
            donePerDay.size()));
  }

  private static double rank(double[] sorted, double part) {
    return sorted[(int) Math.ceil(part * sorted.length) - 1];
  }
}
