package org.comparanda.statistics.line;

import java.util.List;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * A mixture of t distributions: where a new value lies when it is not decided which line holds.
 * Quantiles are roots of Σ share·T((x − centre)/spread).
 *
 * @param parts the lines, shares adding up to 1
 */
public record TMixture(List<Part> parts) {
  /** One line's value, its standard error for a new row, its degrees of freedom, its share. */
  public record Part(double share, double centre, double spread, int degreesOfFreedom) {}

  public TMixture {
    parts = List.copyOf(parts);
  }

  /** The mixture of these parts, shares rescaled to 1. */
  public static Outcome<TMixture> of(List<Part> parts) {
    double sum = parts.stream().mapToDouble(Part::share).sum();
    if (!(sum > 0) || parts.stream().anyMatch(p -> !(p.share() >= 0) || !(p.spread() > 0))) {
      return Outcome.none(
          "No line has a share above zero and a spread.", "Name candidates that have a line.");
    }
    return Outcome.of(
        new TMixture(
            parts.stream()
                .filter(p -> p.share() > 0)
                .map(p -> new Part(p.share() / sum, p.centre(), p.spread(), p.degreesOfFreedom()))
                .toList()));
  }

  /** Chance of a value at most x. */
  public double lowerTail(double x) {
    return parts.stream()
        .mapToDouble(
            p ->
                p.share()
                    * Distributions.tLowerTail((x - p.centre()) / p.spread(), p.degreesOfFreedom()))
        .sum();
  }

  /** The x below which a value falls with chance p, by halving between the parts' quantiles. */
  public double quantile(double p) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Part part : parts) {
      double own =
          part.centre() + part.spread() * Distributions.tQuantile(p, part.degreesOfFreedom());
      low = Math.min(low, own);
      high = Math.max(high, own);
    }
    for (int i = 0; i < 200 && low < high; i++) {
      double middle = low + (high - low) / 2;
      if (middle == low || middle == high) {
        break;
      }
      if (lowerTail(middle) < p) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low + (high - low) / 2;
  }

  /** Where a new value lies. */
  public PredictionInterval interval(double level) {
    return new PredictionInterval(quantile(0.5 - level / 2), quantile(0.5 + level / 2), level);
  }
}
