package org.comparanda.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.comparanda.bone.ElementKey;
import org.comparanda.statistics.Proportion;
import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.Trial;
import org.comparanda.taxon.TaxonName;

/**
 * Two taxa that an element does not tell apart in the trial of the shelf's own animals.
 *
 * @param one alphabetically the first
 * @param element the element that fails
 * @param mixedUp of so many animals of the two, how many were taken for the other
 * @param better the element with the fewest mix-ups of the two, where one does clearly better
 */
public record HardPair(
    TaxonName one,
    TaxonName other,
    ElementKey element,
    Proportion mixedUp,
    Optional<Better> better) {
  /** One in ten taken for the other is too many to trust the element with the pair. */
  private static final double TOO_MANY = 0.1;

  /** The element to measure instead, with its own mix-ups. */
  public record Better(ElementKey element, Proportion mixedUp) {}

  /** One sentence. */
  public String sentence() {
    return "%s and %s: the %s mixed up %d of %d.%s"
        .formatted(
            one,
            other,
            element,
            mixedUp.hits(),
            mixedUp.tries(),
            better
                .map(
                    b ->
                        " Measure the %s instead: %d of %d."
                            .formatted(b.element(), b.mixedUp().hits(), b.mixedUp().tries()))
                .orElse(" No other element of both on the shelf does better."));
  }

  /** Of all trials of a shelf, the worst first. */
  public static List<HardPair> of(Comparison comparison, Stock stock) {
    return of(comparison, stock, (element, number, of) -> {});
  }

  /** The same, saying how far it is; none where it is stopped. */
  public static List<HardPair> of(Comparison comparison, Stock stock, ElementWatch watch) {
    List<Trial> trials = new ArrayList<>();
    List<ElementKey> elements = stock.elements();
    for (ElementKey element : elements) {
      if (watch.stopped()) {
        return List.of();
      }
      watch.begins(element, trials.size() + 1, elements.size());
      trials.add(comparison.trial(element));
    }
    List<HardPair> hard = new ArrayList<>();
    List<TaxonName> taxa = stock.taxa();
    for (int i = 0; i < taxa.size(); i++) {
      for (int j = i + 1; j < taxa.size(); j++) {
        for (Trial trial : trials) {
          pair(taxa.get(i), taxa.get(j), trial, trials).ifPresent(hard::add);
        }
      }
    }
    hard.sort(
        Comparator.comparingDouble((HardPair p) -> -rate(p.mixedUp()))
            .thenComparing(HardPair::one)
            .thenComparing(HardPair::other)
            .thenComparing(HardPair::element));
    return List.copyOf(hard);
  }

  private static Optional<HardPair> pair(
      TaxonName one, TaxonName other, Trial trial, List<Trial> trials) {
    Optional<Proportion> mixed =
        mixedUp(one, other, trial).filter(m -> m.hits() > 0 && rate(m) >= TOO_MANY);
    return mixed.map(
        m -> new HardPair(one, other, trial.element(), m, better(one, other, rate(m), trials)));
  }

  private static Optional<Better> better(
      TaxonName one, TaxonName other, double than, List<Trial> trials) {
    List<Better> others = new ArrayList<>();
    for (Trial trial : trials) {
      mixedUp(one, other, trial)
          .filter(m -> rate(m) < than / 2)
          .ifPresent(m -> others.add(new Better(trial.element(), m)));
    }
    return others.stream()
        .min(
            Comparator.comparingDouble((Better b) -> rate(b.mixedUp()))
                .thenComparing(Better::element));
  }

  /** Empty where the trial lacks one of the two. */
  private static Optional<Proportion> mixedUp(TaxonName one, TaxonName other, Trial trial) {
    int mixed = 0;
    int all = 0;
    Set<TaxonName> there = new TreeSet<>();
    for (Trial.TaxonRate rate : trial.taxa()) {
      if (rate.taxon().equals(one) || rate.taxon().equals(other)) {
        there.add(rate.taxon());
        all += rate.hits().tries();
        mixed +=
            trial
                .table()
                .getOrDefault(rate.taxon(), java.util.Map.of())
                .getOrDefault(rate.taxon().equals(one) ? other : one, 0);
      }
    }
    return there.size() < 2 ? Optional.empty() : Optional.of(new Proportion(mixed, all));
  }

  private static double rate(Proportion proportion) {
    return (double) proportion.hits() / proportion.tries();
  }
}
