package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * How likely each taxon was before anything was measured; always named in the answer.
 *
 * <p>Shape: weights above zero in any sum (they are rescaled over the taxa of the fit); empty for
 * equal and shelf. A taxon that the list lacks has the prior 0: no share, but still a typicality.
 * Errors: {@link IllegalArgumentException} if a weight is negative or not finite, or none is above
 * zero
 *
 * @param kind equal, by shelf counts, or a list
 * @param weights prior per taxon, for a list
 * @param source where a list comes from, shown with every answer
 */
public record Priors(Kind kind, Map<TaxonName, Double> weights, String source) {
  /** Where the priors come from. */
  public enum Kind {
    EQUAL,
    SHELF,
    LIST
  }

  public Priors {
    weights = Collections.unmodifiableMap(new TreeMap<>(weights));
    for (Map.Entry<TaxonName, Double> weight : weights.entrySet()) {
      if (!(weight.getValue() >= 0) || weight.getValue().isInfinite()) {
        throw new IllegalArgumentException(
            "The prior of \"" + weight.getKey() + "\" is not a number of 0 or more.");
      }
    }
    if (kind == Kind.LIST && weights.values().stream().noneMatch(w -> w > 0)) {
      throw new IllegalArgumentException("A list of priors needs one above zero.");
    }
  }

  /** Every taxon of the fit alike. */
  public static Priors equal() {
    return new Priors(Kind.EQUAL, Map.of(), "equal");
  }

  /** In proportion to the animals on the shelf. */
  public static Priors shelf() {
    return new Priors(Kind.SHELF, Map.of(), "shelf");
  }

  /** A list for a place or time, with its source. */
  public static Priors list(Map<TaxonName, Double> weights, String source) {
    return new Priors(Kind.LIST, weights, source);
  }

  /** The name shown: equal, shelf, or the source of the list. */
  public String name() {
    return source;
  }

  /** A list that knows these taxa under the names that they have here, whichever it was made of. */
  Priors forNames(List<TaxonName> here, TaxonTree tree) {
    Map<TaxonName, Double> known = new TreeMap<>(weights);
    for (TaxonName taxon : here) {
      weights.forEach(
          (name, weight) -> {
            if (tree.same(name, taxon)) {
              known.putIfAbsent(taxon, weight);
            }
          });
    }
    return new Priors(kind, known, source);
  }

  private double weight(TaxonName taxon, int rows) {
    return switch (kind) {
      case EQUAL -> 1.0;
      case SHELF -> rows;
      case LIST -> weights.getOrDefault(taxon, 0.0);
    };
  }

  /** These priors for the animals that have the whole set of a sample. */
  Outcome<org.comparanda.statistics.discriminant.Priors> among(Sample sample) {
    return among(sample.taxa(), sample.rows(Sample.Offer.ANIMAL)::count);
  }

  /**
   * These priors for some taxa; none where the list names no taxon of them.
   *
   * @param rows by place in the list of taxa
   */
  Outcome<org.comparanda.statistics.discriminant.Priors> among(
      List<TaxonName> taxa, IntUnaryOperator rows) {
    List<Double> numbers = new ArrayList<>();
    for (int group = 0; group < taxa.size(); group++) {
      numbers.add(weight(taxa.get(group), rows.applyAsInt(group)));
    }
    return numbers.stream().anyMatch(w -> w > 0)
        ? Outcome.of(new org.comparanda.statistics.discriminant.Priors(source, numbers))
        : Outcome.none(
            "The list of priors \"" + source + "\" names no taxon that the shelf has here.",
            "Check its names against those on the shelf, or use equal priors.");
  }
}
