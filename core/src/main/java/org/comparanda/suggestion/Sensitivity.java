package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.taxon.TaxonName;

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
   * Whether other priors would change the answer.
   *
   * @param supposed the other priors, as a condition: "if every kind were equally likely"
   * @param ratio other prior over the one used, per taxon with a share
   */
  Optional<String> priors(String supposed, Map<TaxonName, Double> ratio) {
    double sum = fits.stream().mapToDouble(f -> f.share() * factor(ratio, f)).sum();
    if (!(sum > 0)) {
      return Optional.empty();
    }
    List<TaxonFit> other =
        fits.stream()
            .map(
                f ->
                    new TaxonFit(
                        f.taxon(),
                        f.share() * factor(ratio, f) / sum,
                        f.typicality(),
                        f.distanceSquared(),
                        f.animals()))
            .sorted(Comparator.comparingDouble(TaxonFit::share).reversed())
            .toList();
    Verdict changed = answers.beforeGate(other);
    boolean same =
        says(changed).equals(says(verdict)) && other.get(0).taxon().equals(fits.get(0).taxon());
    return same
        ? Optional.empty()
        : Optional.of(
            "This answer depends on what was likely before: "
                + supposed
                + ", "
                + other.get(0).taxon()
                + " would have the largest share, "
                + Wording.percent(other.get(0).share())
                + " %.");
  }

  private static double factor(Map<TaxonName, Double> ratio, TaxonFit fit) {
    return ratio.getOrDefault(fit.taxon(), 0.0);
  }

  private static String says(Verdict verdict) {
    Answer answer = verdict.answer() == Answer.NEVER_TESTED ? Answer.FITS_ONE : verdict.answer();
    return answer == Answer.FITS_ONE ? answer + " " + verdict.taxa().get(0) : answer.toString();
  }
}
