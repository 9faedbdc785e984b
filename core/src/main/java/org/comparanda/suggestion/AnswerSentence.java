package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.comparanda.statistics.Interval;
import org.comparanda.statistics.Proportion;
import org.comparanda.taxon.TaxonName;

/** Puts a verdict into the one plain sentence that is shown first. */
final class AnswerSentence {
  private final Ladder ladder;
  private final Thresholds limits;
  private final Phrases phrases;

  AnswerSentence(Ladder ladder, ComparisonRules rules) {
    this.ladder = ladder;
    this.limits = rules.thresholds();
    this.phrases = rules.phrases();
  }

  /**
   * The sentence.
   *
   * @param fits largest share first
   * @param gate of the held-out animals answered "one: X", those that are X
   */
  String of(Verdict verdict, List<TaxonFit> fits, Proportion gate) {
    String sentence =
        switch (verdict.answer()) {
          case NOTHING_FITS -> nothing(nearest(fits));
          case POOR_FIT -> poor(verdict, nearest(fits));
          case FITS_ONE -> one(verdict);
          case NEVER_TESTED -> neverTested(verdict, gate);
          case FITS_A_FEW -> few(verdict);
          case FITS_GROUP_ONLY -> group(verdict);
          case YOUNG_BONE, NOT_FITTED, SHELF_TOO_THIN ->
              throw new IllegalArgumentException(verdict.answer() + " comes before any fit.");
        };
    return endsWithStop(verdict) ? sentence + phrases.say("stop") : sentence;
  }

  private boolean endsWithStop(Verdict verdict) {
    return verdict.answer() == Answer.NOTHING_FITS
        || verdict.answer() == Answer.POOR_FIT
        || ladder.mixUp(verdict.taxa());
  }

  private String nothing(TaxonName nearest) {
    return aged("nothing", nearest.value(), phrases.outOf(limits.nothingFits()));
  }

  private String poor(Verdict verdict, TaxonName nearest) {
    String sentence = aged("poor", nearest.value(), phrases.outOf(limits.poorFit()));
    return verdict.taxa().size() < 2
        ? sentence
        : sentence + phrases.say("poor.left", phrases.all(Wording.names(verdict.taxa())));
  }

  private String one(Verdict verdict) {
    return aged("one", verdict.taxa().get(0).value()) + proposed(verdict);
  }

  private String neverTested(Verdict verdict, Proportion gate) {
    return aged("never", verdict.taxa().get(0).value(), tested(gate)) + proposed(verdict);
  }

  private String tested(Proportion gate) {
    if (gate.tries() == 0) {
      return phrases.say("never.none");
    }
    return phrases.say(
        gate.hits() == gate.tries() ? "never.always" : "never.some",
        gate.hits(),
        gate.tries(),
        Wording.percent(gate.wilson(0.95).lower()),
        Wording.percent(limits.gateLowerLimit()));
  }

  private String few(Verdict verdict) {
    List<Candidate> all = verdict.candidates();
    List<String> named = new ArrayList<>();
    all.stream().limit(limits.mostNamed()).forEach(c -> named.add(marked(c)));
    boolean some = all.size() > named.size();
    String list =
        some
            ? phrases.say(
                "few.some", all.size(), String.join(", ", named), all.size() - named.size())
            : phrases.say("few.all", phrases.either(named));
    return aged("few", list, alike(verdict)) + proposed(verdict);
  }

  private String alike(Verdict verdict) {
    return ladder.lookAlikes(verdict.taxa())
        ? phrases.say(verdict.taxa().size() == 2 ? "few.alike.pair" : "few.alike")
        : "";
  }

  private String group(Verdict verdict) {
    String group = verdict.group().map(TaxonName::value).orElse(phrases.say("group.root"));
    String size = phrases.say("candidates", verdict.taxa().size());
    return aged("group", group, size) + proposed(verdict);
  }

  /** On a fossil tray every sentence says how open the name must stay. */
  private String proposed(Verdict verdict) {
    if (!ladder.fossil()) {
      return "";
    }
    return ladder
        .proposal(verdict)
        .map(name -> phrases.say("propose", name.written()))
        .orElse(phrases.say("propose.none"));
  }

  private String marked(Candidate candidate) {
    String taxon = candidate.taxon().value();
    return switch (candidate.mark()) {
      case FITS -> taxon;
      case POOR_FIT -> phrases.say("mark.poor", taxon);
      case NEXT_BEST -> phrases.say("mark.next", taxon);
    };
  }

  /** On a fossil tray nothing is more than the nearest on the shelf. */
  private String aged(String key, Object... places) {
    return phrases.say(ladder.fossil() ? key + ".fossil" : key, places);
  }

  private static TaxonName nearest(List<TaxonFit> fits) {
    return fits.stream()
        .max(Comparator.comparingDouble(TaxonFit::typicality).thenComparing(TaxonFit::share))
        .orElseThrow()
        .taxon();
  }

  /** "38 times in 47 (67 to 90 %)". */
  static String times(Proportion proportion, Phrases phrases) {
    Interval limits = proportion.wilson(0.95);
    return phrases.say(
        "times",
        proportion.hits(),
        proportion.tries(),
        Wording.percent(limits.lower()),
        Wording.percent(limits.upper()));
  }
}
