package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.taxon.TaxonName;

/** What an answer hangs on: one reading, what was likely before, size more than shape. */
final class Sensitivity {
  private final AnswerRules answers;
  private final Thresholds limits;
  private final List<TaxonFit> fits;
  private final Verdict verdict;

  Sensitivity(AnswerRules answers, Thresholds limits, List<TaxonFit> fits, Verdict verdict) {
    this.answers = answers;
    this.limits = limits;
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
              "The answer would change without any one of " + Wording.either(drivers) + ".");
    };
  }

  /**
   * Whether other priors would change the answer.
   *
   * @param name of the other priors
   * @param ratio other prior over the one used, per taxon with a share
   */
  Optional<String> priors(String name, Map<TaxonName, Double> ratio) {
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
            "This answer depends on what was likely before: with "
                + name
                + " priors the largest share, "
                + Wording.percent(other.get(0).share())
                + " %, would be "
                + other.get(0).taxon()
                + "'s.");
  }

  /** Where shape and size speak differently; shape as told by proportions alone. */
  Optional<String> proportions(List<TaxonFit> byProportions) {
    Map<TaxonName, Double> shape =
        byProportions.stream().collect(Collectors.toMap(TaxonFit::taxon, TaxonFit::typicality));
    List<String> shapeOnly =
        fits.stream()
            .filter(f -> f.typicality() < limits.poorFit())
            .filter(f -> shape.getOrDefault(f.taxon(), 0.0) >= limits.poorFit())
            .map(f -> f.taxon().value())
            .toList();
    if (!shapeOnly.isEmpty()) {
      return Optional.of(
          "By proportions it fits " + Wording.either(shapeOnly) + ", by size it doesn't.");
    }
    TaxonFit first = fits.get(0);
    return first.typicality() >= limits.poorFit()
            && shape.getOrDefault(first.taxon(), 1.0) < limits.nothingFits()
        ? Optional.of("As a whole it fits " + first.taxon() + ", by proportions it doesn't.")
        : Optional.empty();
  }

  private static double factor(Map<TaxonName, Double> ratio, TaxonFit fit) {
    return ratio.getOrDefault(fit.taxon(), 0.0);
  }

  private static String says(Verdict verdict) {
    Answer answer = verdict.answer() == Answer.NEVER_TESTED ? Answer.FITS_ONE : verdict.answer();
    return answer == Answer.FITS_ONE ? answer + " " + verdict.taxa().get(0) : answer.toString();
  }
}
