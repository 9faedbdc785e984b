package org.comparanda.suggestion;

import java.util.List;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;
import org.comparanda.statistics.discriminant.GroupDistances;

/**
 * How a bone stands among the animals that have its measurements.
 *
 * @param reason the method and why it was chosen
 * @param fits largest share first
 * @param gate of the held-out animals that this set answers "one: the first taxon", those that are
 */
record Judgement(
    Fit fit,
    String reason,
    GroupDistances distances,
    List<TaxonFit> fits,
    TrialRun trial,
    Proportion gate,
    Verdict verdict) {

  /** What is asked: a set of readings of one element, and whose. */
  record Question(
      ElementKey element, List<MeasurementCode> set, BoneRow bone, int unit, Sample.Offer offer) {
    Question withSet(List<MeasurementCode> other) {
      return new Question(element, other, bone, unit, offer);
    }
  }

  /** The judgement; not estimable where the shelf is too thin for the set. */
  static Outcome<Judgement> of(Comparison comparison, Question question) {
    Fit fit = fit(comparison, question, comparison.rules());
    return fit.fits(question.bone())
        .then(
            fits ->
                fit.distances()
                    .then(
                        distances ->
                            Outcome.of(decided(comparison, question, fit, distances, fits))));
  }

  /** The answer before the gate, for a quick look at another set. */
  static Verdict beforeGate(Comparison comparison, Question question) {
    return fits(comparison, question, comparison.rules())
        .fold(comparison.answers()::beforeGate, none -> Verdict.none());
  }

  /** Shares and typicalities alone, for a quick look under other rules. */
  static Outcome<List<TaxonFit>> fits(
      Comparison comparison, Question question, ComparisonRules rules) {
    return fit(comparison, question, rules).fits(question.bone());
  }

  private static Fit fit(Comparison comparison, Question question, ComparisonRules rules) {
    Sample sample = comparison.sample(question.element(), question.set());
    return Fit.of(sample, question.unit(), question.offer(), rules);
  }

  private static Judgement decided(
      Comparison comparison,
      Question question,
      Fit fit,
      GroupDistances distances,
      List<TaxonFit> fits) {
    Thresholds limits = comparison.rules().thresholds();
    TrialRun trial = comparison.gate(question.element(), question.set());
    Proportion gate = trial.gate(fits.get(0).taxon(), question.unit());
    Verdict verdict =
        comparison
            .answers()
            .decide(fits, taxon -> gate.wilson(0.95).lower() >= limits.gateLowerLimit());
    return new Judgement(
        fit,
        fit.model()
            .fold(m -> fit.choice().reasonWith(m.shrinkage()), none -> fit.choice().reason()),
        distances,
        fits,
        trial,
        gate,
        verdict);
  }
}
