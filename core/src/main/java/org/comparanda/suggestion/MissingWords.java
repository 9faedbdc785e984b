package org.comparanda.suggestion;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.taxon.TaxonName;

/** Says how holes of the shelf were met, and what that costs. */
record MissingWords(Fit fit, BoneRow bone, Thresholds limits) {

  /** What stands under the answer; empty where nothing was filled. */
  String inShort() {
    return fit.filled().isEmpty()
        ? ""
        : " " + whole() + "; holes of the others were filled by calculation.";
  }

  Suggestion.Missing basis() {
    return fit.filled()
        .map(
            filled ->
                new Suggestion.Missing(
                    Suggestion.Missing.Way.FILLED, words(filled), wholeAnimals(), lowest()))
        .orElseGet(
            () ->
                new Suggestion.Missing(
                    Suggestion.Missing.Way.EXACT_SUBSET,
                    "The animals that have all of this set; what is missing was not guessed.",
                    wholeAnimals(),
                    Optional.empty()));
  }

  /** Where ranks of so few animals can't rule anything out; empty where they can. */
  Optional<String> notRuledOut() {
    return lowest()
        .filter(lowest -> lowest >= limits.nothingFits())
        .map(
            lowest ->
                "Typicality is a rank among "
                    + Wording.count(fit.moments().rows(), "animal")
                    + " here and can't go below "
                    + String.format(Locale.ROOT, "%.3f", lowest)
                    + ": nothing is ruled out, and a kind that the shelf lacks shows as a poor fit"
                    + " at most.");
  }

  private String words(Filled filled) {
    List<TaxonName> untold = filled.untold();
    return whole()
        + ", too few, so the holes of "
        + fit.moments().rows()
        + " were filled by expectation and maximisation. That supposes that what is missing is"
        + " missing at random, and breakage isn't. Typicality is a rank among these animals, pooled"
        + " over the taxa where a taxon's own are too few (needs equal spread)."
        + (untold.isEmpty()
            ? ""
            : " Not in it, since one of these was never measured on them: "
                + Wording.all(Wording.names(untold))
                + ".");
  }

  private String whole() {
    return switch (wholeAnimals()) {
      case 0 -> "No animal has the whole set";
      case 1 -> "Only 1 animal has the whole set";
      default -> "Only " + wholeAnimals() + " animals have the whole set";
    };
  }

  private int wholeAnimals() {
    return fit.sample().animalsWithout(fit.unit()).size();
  }

  private Optional<Double> lowest() {
    return fit.filled().flatMap(f -> f.lowest(fit.sample().numbers(bone)).value());
  }
}
