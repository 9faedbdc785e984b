package org.comparanda.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.comparanda.reference.BoneInHand;
import org.comparanda.statistics.Outcome;
import org.comparanda.suggestion.Answer;
import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.taxon.TaxonName;

/** Shares of the candidates for a bone, as plain numbers for the size desk. */
record TaxonShares(Comparison comparison) {
  Outcome<Map<TaxonName, Double>> of(BoneInHand bone) {
    Suggestion suggestion = comparison.suggest(bone);
    Answer answer = suggestion.answer();
    if (answer == Answer.NOTHING_FITS || answer == Answer.POOR_FIT || suggestion.taxa().isEmpty()) {
      return Outcome.none(suggestion.sentence(), "Name the taxon by --taxa if a person has.");
    }
    Map<TaxonName, Double> shares = new LinkedHashMap<>();
    suggestion.taxa().stream()
        .filter(fit -> suggestion.candidates().contains(fit.taxon()))
        .forEach(fit -> shares.put(fit.taxon(), fit.share()));
    return Outcome.of(shares);
  }
}
