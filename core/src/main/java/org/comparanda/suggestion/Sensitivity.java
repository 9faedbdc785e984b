package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.comparanda.measurement.MeasurementCode;

/** What an answer hangs on: one reading, what was likely before. */
final class Sensitivity {
  private final AnswerRules answers;
  private final List<TaxonFit> fits;
  private final Verdict verdict;

  Sensitivity(AnswerRules answers, List<TaxonFit> fits, Verdict verdict) {
    this.answers = answers;
    this.fits = fits;
    this.verdict = verdict;
  }

  /**
   * Which readings the answer hangs on: leaving one out changes it.
   *
   * @param without the answer before the gate for a smaller set
   */
  Optional<String> readings(
      List<MeasurementCode> set, Function<List<MeasurementCode>, Verdict> without) {
    if (set.size() < 2) {
      return Optional.empty();
    }
    List<String> drivers = new ArrayList<>();
    for (MeasurementCode code : set) {
      Verdict other = without.apply(set.stream().filter(c -> !c.equals(code)).toList());
      if (other.answer() != Answer.SHELF_TOO_THIN && !says(other).equals(says(verdict))) {
        drivers.add(code.value());
      }
    }
    return switch (drivers.size()) {
      case 0 -> Optional.empty();
      case 1 ->
          Optional.of("One reading drives this answer: " + drivers.get(0) + ". Measure it again.");
      default ->
          Optional.of(
              "Each of "
                  + Wording.all(drivers)
                  + " drives this answer: leave one out and it changes. Measure them again.");
    };
  }

  /**
   * Whether other priors would change the answer or the taxon of largest share.
   *
   * @param supposed the other priors, as a condition: "if every kind were equally likely"
   * @param other the fits under them, largest share first
   */
  Optional<String> priors(String supposed, List<TaxonFit> other) {
    TaxonFit first = other.get(0);
    Verdict changed = answers.beforeGate(other);
    boolean sameAnswer = says(changed).equals(says(verdict));
    if (sameAnswer && first.taxon().equals(fits.get(0).taxon())) {
      return Optional.empty();
    }
    return Optional.of(
        "This answer depends on what was likely before: "
            + supposed
            + ", "
            + first.taxon()
            + " would have the largest share, "
            + Wording.percent(first.share())
            + " %"
            + (sameAnswer ? "." : ", and the answer would be \"" + words(changed) + "\"."));
  }

  private static String words(Verdict verdict) {
    return switch (verdict.answer()) {
      case FITS_ONE -> "Fits one: " + verdict.taxa().get(0);
      case FITS_A_FEW -> "Fits a few: " + Wording.either(Wording.names(verdict.taxa()));
      case FITS_GROUP_ONLY -> "Fits the group only";
      case NOTHING_FITS -> "Nothing here fits";
      case POOR_FIT -> "Poor fit";
      case YOUNG_BONE, NOT_FITTED, SHELF_TOO_THIN, NEVER_TESTED ->
          throw new IllegalArgumentException(verdict.answer() + " is no answer before the gate.");
    };
  }

  private static String says(Verdict verdict) {
    Answer answer = verdict.answer() == Answer.NEVER_TESTED ? Answer.FITS_ONE : verdict.answer();
    return answer == Answer.FITS_ONE ? answer + " " + verdict.taxa().get(0) : answer.toString();
  }
}
