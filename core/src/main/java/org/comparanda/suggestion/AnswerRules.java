package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * The rules that turn shares and typicalities into exactly one answer, in their order: nothing
 * fits, poor fit, one, a few, group. A pure function; the fits come in order of share.
 *
 * <p>Source: the house's own rules (docs/methods.md, "Which answer").
 */
final class AnswerRules {
  private final Thresholds limits;
  private final TaxonTree tree;

  AnswerRules(Thresholds limits, TaxonTree tree) {
    this.limits = limits;
    this.tree = tree;
  }

  /** The answer as it stands before the gate: the trial is asked of these. */
  Verdict beforeGate(List<TaxonFit> fits) {
    return decide(fits, taxon -> true);
  }

  /**
   * The answer.
   *
   * @param fits at least one, largest share first
   * @param gate whether the trial of this set lets a taxon be named alone
   */
  Verdict decide(List<TaxonFit> fits, Predicate<TaxonName> gate) {
    double best = fits.stream().mapToDouble(TaxonFit::typicality).max().orElse(0);
    if (!(best >= limits.nothingFits())) {
      return new Verdict(Answer.NOTHING_FITS, List.of(), List.of(), Optional.empty());
    }
    if (best < limits.poorFit()) {
      return new Verdict(Answer.POOR_FIT, poor(fits), List.of(), Optional.empty());
    }
    TaxonFit first = fits.get(0);
    if (first.share() >= limits.oneShare() && first.typicality() >= limits.poorFit()) {
      Answer answer = gate.test(first.taxon()) ? Answer.FITS_ONE : Answer.NEVER_TESTED;
      return new Verdict(answer, plainCandidates(fits), lessLikely(fits), Optional.empty());
    }
    return several(candidates(fits));
  }

  private Verdict several(List<Candidate> candidates) {
    Optional<TaxonName> group =
        candidates.size() <= limits.mostNamed()
            ? Optional.empty()
            : tree.lowestCommon(candidates.stream().map(Candidate::taxon).toList());
    Answer answer = group.isPresent() ? Answer.FITS_GROUP_ONLY : Answer.FITS_A_FEW;
    return new Verdict(answer, candidates, List.of(), group);
  }

  private List<Candidate> poor(List<TaxonFit> fits) {
    return fits.stream()
        .filter(f -> f.typicality() >= limits.nothingFits())
        .sorted(Comparator.comparingDouble(TaxonFit::typicality).reversed())
        .map(f -> new Candidate(f.taxon(), Candidate.Mark.POOR_FIT))
        .toList();
  }

  private List<TaxonName> lessLikely(List<TaxonFit> fits) {
    return fits.stream()
        .skip(1)
        .filter(f -> f.typicality() >= limits.poorFit())
        .map(TaxonFit::taxon)
        .toList();
  }

  private List<Candidate> plainCandidates(List<TaxonFit> fits) {
    List<Candidate> found = new ArrayList<>();
    for (TaxonFit fit : fits) {
      if (fit.typicality() >= limits.poorFit() && fit.share() >= limits.candidateShare()) {
        found.add(new Candidate(fit.taxon(), Candidate.Mark.FITS));
      } else if (fit.typicality() >= limits.nothingFits() && fit.share() >= limits.weakShare()) {
        found.add(new Candidate(fit.taxon(), Candidate.Mark.POOR_FIT));
      }
    }
    return found;
  }

  /** The set C with its corner cases: never empty, and never alone where there are two taxa. */
  private List<Candidate> candidates(List<TaxonFit> fits) {
    List<Candidate> found = new ArrayList<>(plainCandidates(fits));
    if (found.isEmpty()) {
      fits.stream()
          .max(Comparator.comparingDouble(TaxonFit::typicality))
          .ifPresent(f -> found.add(new Candidate(f.taxon(), Candidate.Mark.NEXT_BEST)));
    }
    if (found.size() == 1) {
      TaxonName lone = found.get(0).taxon();
      fits.stream()
          .filter(f -> !f.taxon().equals(lone))
          .findFirst()
          .ifPresent(f -> found.add(new Candidate(f.taxon(), Candidate.Mark.NEXT_BEST)));
    }
    return found;
  }
}
