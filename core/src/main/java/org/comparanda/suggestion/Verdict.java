package org.comparanda.suggestion;

import java.util.List;
import java.util.Optional;
import org.comparanda.taxon.TaxonName;

/**
 * An answer by the rules, before it is put in words.
 *
 * @param answer the answer
 * @param candidates the set C, best first
 * @param lessLikely other taxa that are not ruled out; only beside one that is named
 * @param group lowest group that holds all of C, for {@link Answer#FITS_GROUP_ONLY}
 */
record Verdict(
    Answer answer,
    List<Candidate> candidates,
    List<TaxonName> lessLikely,
    Optional<TaxonName> group) {
  Verdict {
    candidates = List.copyOf(candidates);
    lessLikely = List.copyOf(lessLikely);
  }

  /** Where no fit can be made. */
  static Verdict none() {
    return new Verdict(Answer.SHELF_TOO_THIN, List.of(), List.of(), Optional.empty());
  }

  List<TaxonName> taxa() {
    return candidates.stream().map(Candidate::taxon).toList();
  }
}
