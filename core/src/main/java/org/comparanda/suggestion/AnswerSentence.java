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

  AnswerSentence(Ladder ladder, Thresholds limits) {
    this.ladder = ladder;
    this.limits = limits;
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
    return endsWithStop(verdict) ? sentence + Wording.STOP : sentence;
  }

  private boolean endsWithStop(Verdict verdict) {
    return verdict.answer() == Answer.NOTHING_FITS
        || verdict.answer() == Answer.POOR_FIT
        || ladder.mixUp(verdict.taxa());
  }

  private String nothing(TaxonName nearest) {
    String start =
        ladder.fossil()
            ? "Nothing on the shelf fits; nearest on the shelf is "
            : "Nothing here fits: nearest is ";
    return start + nearest + ", but fewer than " + unlike(limits.nothingFits(), nearest);
  }

  private String poor(Verdict verdict, TaxonName nearest) {
    String start = ladder.fossil() ? "Poor fit: nearest on the shelf is " : "Poor fit: nearest is ";
    String sentence = start + nearest + ", but fewer than " + unlike(limits.poorFit(), nearest);
    return verdict.taxa().size() < 2
        ? sentence
        : sentence + " Not ruled out: " + Wording.all(Wording.names(verdict.taxa())) + ".";
  }

  private static String unlike(double part, TaxonName taxon) {
    return Wording.inHundred(part) + " " + taxon + " are as unlike their mean as this bone.";
  }

  private String one(Verdict verdict) {
    TaxonName taxon = verdict.taxa().get(0);
    return ladder.fossil()
        ? "Nearest on the shelf: " + taxon + " alone." + proposed(verdict)
        : "Fits one: " + taxon + ".";
  }

  private String neverTested(Verdict verdict, Proportion gate) {
    TaxonName taxon = verdict.taxa().get(0);
    String start =
        ladder.fossil()
            ? "Never tested: nearest on the shelf is " + taxon + " alone"
            : "Never tested: it would be " + taxon + " alone";
    return start
        + tested(gate)
        + " More animals of "
        + taxon
        + " on the shelf are needed."
        + proposed(verdict);
  }

  private String tested(Proportion gate) {
    if (gate.tries() == 0) {
      return ", but in the trial of this set no animal was answered so.";
    }
    boolean always = gate.hits() == gate.tries();
    return ", "
        + (always ? "and" : "but")
        + " in the trial of this set that answer was right "
        + (always ? "" : "only ")
        + gate.hits()
        + (gate.hits() == 1 ? " time in " : " times in ")
        + gate.tries()
        + (always ? ", which is too few to go by" : "")
        + " (lower limit "
        + Wording.percent(gate.wilson(0.95).lower())
        + " %, needed "
        + Wording.percent(limits.gateLowerLimit())
        + " %).";
  }

  private String few(Verdict verdict) {
    List<Candidate> all = verdict.candidates();
    List<String> named = new ArrayList<>();
    all.stream().limit(limits.mostNamed()).forEach(c -> named.add(marked(c)));
    boolean some = all.size() > named.size();
    String start = ladder.fossil() ? "Nearest on the shelf are a few" : "Fits a few";
    String list =
        some
            ? " of "
                + all.size()
                + " taxa: "
                + String.join(", ", named)
                + " and "
                + (all.size() - named.size())
                + " more"
            : ": " + Wording.either(named);
    String alike =
        ladder.lookAlikes(verdict.taxa())
            ? verdict.taxa().size() == 2 ? ", a known look-alike pair" : ", known look-alikes"
            : "";
    return start + list + alike + "." + proposed(verdict);
  }

  private String group(Verdict verdict) {
    String group = verdict.group().map(TaxonName::value).orElse("the root of the tree");
    String size = " (" + Wording.count(verdict.taxa().size(), "candidate") + ")";
    return ladder.fossil()
        ? "Nearest on the shelf is a group, " + group + size + "." + proposed(verdict)
        : "Fits the group only: " + group + size + ".";
  }

  /** On a fossil tray every sentence says how open the name must stay. */
  private String proposed(Verdict verdict) {
    if (!ladder.fossil()) {
      return "";
    }
    return ladder
        .proposal(verdict)
        .map(name -> " Propose " + name.written() + ", no closer.")
        .orElse(" Propose no name.");
  }

  private static String marked(Candidate candidate) {
    return switch (candidate.mark()) {
      case FITS -> candidate.taxon().value();
      case POOR_FIT -> candidate.taxon() + " (poor fit)";
      case NEXT_BEST -> candidate.taxon() + " (next best)";
    };
  }

  private static TaxonName nearest(List<TaxonFit> fits) {
    return fits.stream()
        .max(Comparator.comparingDouble(TaxonFit::typicality).thenComparing(TaxonFit::share))
        .orElseThrow()
        .taxon();
  }

  /** "they were told apart 38 times in 47 (67 to 90 %)" and the like. */
  static String times(Proportion proportion) {
    Interval limits = proportion.wilson(0.95);
    return proportion.hits()
        + " times in "
        + proportion.tries()
        + " ("
        + Wording.percent(limits.lower())
        + " to "
        + Wording.percent(limits.upper())
        + " %)";
  }
}
