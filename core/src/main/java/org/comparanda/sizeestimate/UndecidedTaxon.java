package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.PredictionInterval;
import org.comparanda.statistics.line.TMixture;
import org.comparanda.taxon.TaxonName;

/**
 * Size of a bone whose taxon is not decided: each candidate's own line, and the mixture of them by
 * share.
 *
 * @param byTaxon each candidate's estimate, or why it has none
 * @param mixture all candidates together
 */
public record UndecidedTaxon(
    Map<TaxonName, Outcome<SizeEstimate>> byTaxon, Outcome<Mixture> mixture) {
  /** Candidates without a line may hold this share at most, or an interval would be a lie. */
  private static final double UNCOVERED = 0.05;

  public UndecidedTaxon {
    byTaxon = Collections.unmodifiableMap(new TreeMap<>(byTaxon));
  }

  /**
   * The mixture.
   *
   * @param median half of it lies below
   * @param prediction where this one animal is expected; any middle may lie in a gap
   * @param uncoveredShare share of candidates that have no line and are not in it
   */
  public record Mixture(double median, PredictionInterval prediction, double uncoveredShare) {}

  static UndecidedTaxon of(
      Map<TaxonName, Outcome<SizeEstimate>> byTaxon,
      Map<TaxonName, Double> shares,
      LineScale scale,
      double level) {
    double sum = shares.values().stream().mapToDouble(Double::doubleValue).sum();
    List<TMixture.Part> parts = new ArrayList<>();
    double covered = 0;
    for (Map.Entry<TaxonName, Outcome<SizeEstimate>> entry : byTaxon.entrySet()) {
      double share = shares.getOrDefault(entry.getKey(), 0.0);
      Optional<TMixture.Part> part =
          entry.getValue().value().flatMap(estimate -> part(share, estimate));
      if (part.isPresent()) {
        parts.add(part.get());
        covered += share;
      }
    }
    if (!(sum > 0)) {
      return new UndecidedTaxon(
          byTaxon,
          Outcome.none(
              "No taxon on the shelf fits this bone, so no line holds for it.",
              "Open the drawer and compare by eye."));
    }
    double uncovered = Math.max(0, 1 - covered / sum);
    if (uncovered > UNCOVERED) {
      return new UndecidedTaxon(
          byTaxon,
          Outcome.none(
              "Candidates with a share of "
                  + Math.round(100 * uncovered)
                  + " in 100 have no line of their own.",
              "Read the candidates that have one, or measure more animals of the others."));
    }
    return new UndecidedTaxon(
        byTaxon,
        TMixture.of(parts)
            .then(
                m ->
                    Outcome.of(
                        new Mixture(
                            scale.back(m.quantile(0.5)),
                            m.interval(level).through(scale::back),
                            uncovered))));
  }

  private static Optional<TMixture.Part> part(double share, SizeEstimate estimate) {
    return estimate
        .standardErrorOfNew()
        .value()
        .filter(se -> se > 0)
        .map(se -> new TMixture.Part(share, estimate.fit(), se, estimate.degreesOfFreedom()));
  }
}
