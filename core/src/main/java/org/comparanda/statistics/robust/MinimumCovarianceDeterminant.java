package org.comparanda.statistics.robust;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * Looks for the h of n rows whose covariance has the smallest determinant, h = ⌊(n + p + 1)/2⌋,
 * then reweights: rows within the 0.975 quantile of chi-square count for centre and spread.
 *
 * <p>All subsets of p + 1 rows are starting points where they are few, otherwise seeded random
 * ones; two concentration steps each, the best ten to the end. Of more than 600 rows the first
 * steps are taken on 600 spread evenly over them (the source draws chance ones), the rest on all.
 * Shape: n rows of p numbers, n ≥ 2p + 2. Source: Rousseeuw and Van Driessen 1999, Technometrics
 * 41:212–223; factors of consistency: Croux and Haesbroeck 1999; for small samples: {@link
 * SmallSampleFactor}.
 *
 * @param starts random starting points where there are more subsets than {@code allSubsets}
 * @param allSubsets so many subsets or fewer are all tried
 * @param seed of the random starting points
 */
public record MinimumCovarianceDeterminant(int starts, int allSubsets, long seed) {
  private static final double KEPT = 0.975;
  private static final int FIRST_STEPS = 2;
  private static final int TO_THE_END = 10;
  private static final int MOST_STEPS = 200;
  private static final int MANY = 600;

  public static MinimumCovarianceDeterminant withDefaults() {
    return new MinimumCovarianceDeterminant(500, 20_000, 1);
  }

  public MinimumCovarianceDeterminant withStarts(int other) {
    return new MinimumCovarianceDeterminant(other, allSubsets, seed);
  }

  public MinimumCovarianceDeterminant withAllSubsets(int other) {
    return new MinimumCovarianceDeterminant(starts, other, seed);
  }

  /** Not estimable where rows are too few, or half of them lie in a plane. */
  public Outcome<RobustSpread> of(List<double[]> rows) {
    int n = rows.size();
    int p = n == 0 ? 0 : rows.get(0).length;
    if (p == 0 || n < 2 * p + 2) {
      return Outcome.none(
          "%d rows are too few for a robust spread of %d measurements.".formatted(n, p),
          "Add animals, or leave measurements out.");
    }
    List<double[]> first = sample(rows);
    List<Concentration> found = new ArrayList<>();
    for (int[] start : StartingPoints.of(first.size(), p + 1, this)) {
      Concentration.from(first, start)
          .flatMap(c -> c.steps(first, half(first.size(), p), FIRST_STEPS))
          .ifPresent(found::add);
    }
    Optional<Concentration> best =
        found.stream()
            .sorted(Comparator.comparingDouble(Concentration::logDeterminant))
            .limit(TO_THE_END)
            .flatMap(c -> c.steps(rows, half(n, p), MOST_STEPS).stream())
            .min(Comparator.comparingDouble(Concentration::logDeterminant));
    return best.map(b -> reweighted(rows, b))
        .orElseGet(
            () ->
                Outcome.none(
                    "Half of the rows lie in a plane: these measurements repeat one another.",
                    "Leave one of them out."));
  }

  private static int half(int n, int p) {
    return (n + p + 1) / 2;
  }

  private static List<double[]> sample(List<double[]> rows) {
    int n = rows.size();
    return n <= MANY
        ? rows
        : IntStream.range(0, MANY).mapToObj(i -> rows.get((int) ((long) i * n / MANY))).toList();
  }

  static Outcome<RobustSpread> reweighted(List<double[]> rows, Concentration best) {
    int n = rows.size();
    int p = rows.get(0).length;
    double quantile = Distributions.chiSquareQuantile(KEPT, p);
    double raw = consistency(p, (double) best.subset().count() / n) * SmallSampleFactor.raw(p, n);
    double[] first = best.squaredDistances(rows);
    List<Integer> kept = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      if (first[i] / raw < quantile) {
        kept.add(i);
      }
    }
    double last =
        kept.size() == n
            ? 1
            : consistency(p, (double) kept.size() / n) * SmallSampleFactor.reweighted(p, n);
    return Concentration.from(rows, kept.stream().mapToInt(i -> i).toArray())
        .map(
            c -> {
              List<Double> squared = new ArrayList<>();
              for (double d : c.squaredDistances(rows)) {
                squared.add(d / last);
              }
              return Outcome.of(
                  new RobustSpread(best.subset().boxed().toList(), best.logDeterminant(), squared));
            })
        .orElseGet(
            () ->
                Outcome.none(
                    "The rows that count lie in a plane.", "Leave one of the measurements out."));
  }

  /** What the covariance of the innermost part of a normal kind is multiplied by. */
  private static double consistency(int p, double part) {
    double quantile = Distributions.chiSquareQuantile(Math.min(part, 1 - 1e-12), p);
    return part / (1 - Distributions.chiSquareUpperTail(quantile, p + 2));
  }
}
