package org.comparanda.statistics.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * Least trimmed squares, reweighted: the line through the half of the rows that lie closest
 * together, then the ordinary line through all rows within 2.5 of its spreads. A check on an
 * ordinary line, not a replacement.
 *
 * <p>Source: Rousseeuw and Leroy 1987, Robust Regression and Outlier Detection; concentration steps
 * after Rousseeuw and Van Driessen 2006, Data Min. Knowl. Discov. 12:29-45 (from memory).
 *
 * @param fit the ordinary line through the rows kept
 * @param setAside rows not kept, counted from 0
 */
public record RobustLine(LeastSquaresFit fit, List<Integer> setAside) {
  private static final int STARTS = 500;
  private static final int STEPS = 20;
  private static final double FAR = 2.5;

  public RobustLine {
    setAside = List.copyOf(setAside);
  }

  /** The robust line; the same seed gives the same line. */
  public static Outcome<RobustLine> fit(Design design, long seed) {
    int n = design.rows();
    int p = design.predictors();
    if (n < 2 * (p + 2)) {
      return Outcome.none(
          "A robust line needs at least " + 2 * (p + 2) + " rows, got " + n + ".", "Add animals.");
    }
    int half = (n + p + 2) / 2;
    SplittableRandom random = new SplittableRandom(seed);
    Optional<Trimmed> best = Optional.empty();
    for (int start = 0; start < STARTS; start++) {
      Optional<Trimmed> found =
          concentrate(design, random.ints(0, n).distinct().limit(p + 2).boxed().toList(), half);
      if (found.isPresent() && best.map(b -> found.get().squares < b.squares).orElse(true)) {
        best = found;
      }
    }
    return best.map(b -> reweight(design, b, half))
        .orElseGet(
            () ->
                Outcome.none(
                    "No half of the rows carries a line.",
                    "A line needs animals of different size."));
  }

  private record Trimmed(LeastSquaresFit fit, double squares) {}

  /** Refits to the closest half until it no longer changes. */
  private static Optional<Trimmed> concentrate(Design design, List<Integer> start, int half) {
    List<Integer> rows = start;
    Optional<Trimmed> last = Optional.empty();
    for (int step = 0; step < STEPS; step++) {
      Optional<LeastSquaresFit> fit = LeastSquares.withIntercept().fit(design.only(rows)).value();
      if (fit.isEmpty()) {
        return Optional.empty();
      }
      rows =
          IntStream.range(0, design.rows())
              .boxed()
              .sorted(Comparator.comparingDouble(i -> Math.abs(residual(design, fit.get(), i))))
              .limit(half)
              .toList();
      double squares =
          rows.stream().mapToDouble(i -> Math.pow(residual(design, fit.get(), i), 2)).sum();
      if (last.isPresent() && squares >= last.get().squares * (1 - 1e-12)) {
        return last;
      }
      last = Optional.of(new Trimmed(fit.get(), squares));
    }
    return last;
  }

  private static Outcome<RobustLine> reweight(Design design, Trimmed best, int half) {
    double part = (double) half / design.rows();
    double q = Distributions.normalQuantile((1 + part) / 2);
    double density = Math.exp(-q * q / 2) / Math.sqrt(2 * Math.PI);
    double spread = Math.sqrt(best.squares / half * part / (part - 2 * q * density));
    List<Integer> kept = new ArrayList<>();
    List<Integer> aside = new ArrayList<>();
    for (int i = 0; i < design.rows(); i++) {
      (Math.abs(residual(design, best.fit, i)) <= FAR * spread ? kept : aside).add(i);
    }
    return LeastSquares.withIntercept()
        .fit(design.only(kept))
        .then(fit -> Outcome.of(new RobustLine(fit, aside)));
  }

  private static double residual(Design design, LeastSquaresFit fit, int i) {
    return design.y(i) - fit.at(design.x(i));
  }
}
