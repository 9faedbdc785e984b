package org.comparanda.suggestion;

import java.util.List;
import java.util.Optional;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.discriminant.DiscriminantModel;
import org.comparanda.statistics.discriminant.GroupDistance;
import org.comparanda.statistics.discriminant.GroupDistances;
import org.comparanda.statistics.discriminant.GroupMoments;
import org.comparanda.statistics.discriminant.SidePairs;

/**
 * A sample with one animal out, fitted and ready to judge a bone: the animals that have the whole
 * set, or all with their holes filled where these are too few.
 *
 * @param unit the animal left out, or {@link Sample#STRANGER}
 * @param choice the method, with the reason
 * @param filled how holes were filled; empty where nothing had to be
 */
record Fit(
    Sample sample,
    int unit,
    MethodChoice choice,
    GroupMoments moments,
    Outcome<GroupDistances> distances,
    Outcome<DiscriminantModel> model,
    Optional<Filled> filled) {

  static Fit of(Sample sample, int unit, Sample.Offer offer, ComparisonRules rules) {
    return sample
        .filled(unit)
        .then(
            filled ->
                sample
                    .choiceWithHoles()
                    .then(
                        choice ->
                            Outcome.of(withHoles(sample, unit, offer, rules, filled, choice))))
        .fold(fit -> fit, none -> exact(sample, unit, offer, rules));
  }

  private static Fit withHoles(
      Sample sample,
      int unit,
      Sample.Offer offer,
      ComparisonRules rules,
      Filled filled,
      MethodChoice choice) {
    SidePairs sides = sample.rows(offer).sides().withoutUnit(unit);
    GroupMoments moments = filled.moments().withSides(sides);
    Outcome<DiscriminantModel> model =
        rules
            .priors()
            .among(sample.taxa(), sample.withHoles()::count)
            .then(priors -> choice.ofMoments(filled.forShares().withSides(sides), priors));
    return new Fit(
        sample, unit, choice, moments, GroupDistances.of(moments), model, Optional.of(filled));
  }

  private static Fit exact(Sample sample, int unit, Sample.Offer offer, ComparisonRules rules) {
    GroupMoments moments = sample.momentsWithout(unit, offer);
    MethodChoice choice = sample.choice();
    Outcome<DiscriminantModel> model =
        rules
            .priors()
            .among(sample)
            .then(priors -> choice.method().fitWithout(unit, sample.rows(offer), moments, priors));
    Outcome<GroupDistances> distances =
        sample.degreesWithout(unit) < rules.thresholds().degreesNeeded()
            ? Outcome.none("Too few animals have this set.", "Leave out measurements.")
            : GroupDistances.of(moments);
    return new Fit(sample, unit, choice, moments, distances, model, Optional.empty());
  }

  /** Fits of a bone that has the set, largest share first; never none. */
  Outcome<List<TaxonFit>> fits(BoneRow bone) {
    double[] x = sample.numbers(bone);
    return distances.then(
        d ->
            model.then(
                m ->
                    typical(d.to(x), x)
                        .then(all -> Outcome.of(Fits.of(sample.taxa(), m.shares(x), all)))));
  }

  private Outcome<List<GroupDistance>> typical(List<GroupDistance> distances, double... x) {
    return filled.map(f -> f.ranked(distances, x)).orElseGet(() -> Outcome.of(distances));
  }

  /** The animals behind the fit, in catalogue order. */
  List<AnimalRow> animals() {
    return filled.isEmpty()
        ? sample.animalsWithout(unit)
        : sample.animalsWithAny(unit).stream()
            .filter(a -> moments.count(sample.taxa().indexOf(a.taxon())) > 0)
            .toList();
  }
}
