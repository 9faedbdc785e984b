package org.comparanda.suggestion;

import java.util.List;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.discriminant.Discriminant;
import org.comparanda.statistics.discriminant.DiscriminantModel;
import org.comparanda.statistics.discriminant.GroupDistances;
import org.comparanda.statistics.discriminant.GroupMoments;

/**
 * A sample with one animal out, fitted and ready to judge a bone.
 *
 * @param unit the animal left out, or {@link Sample#STRANGER}
 */
record Fit(
    Sample sample,
    int unit,
    GroupMoments moments,
    Outcome<GroupDistances> distances,
    Outcome<DiscriminantModel> model) {

  static Fit of(Sample sample, int unit, Sample.Offer offer, ComparisonRules rules) {
    GroupMoments moments = sample.momentsWithout(unit, offer);
    Discriminant method = sample.choice().method();
    Outcome<DiscriminantModel> model =
        rules
            .priors()
            .among(sample)
            .then(priors -> method.fitWithout(unit, sample.rows(offer), moments, priors));
    Outcome<GroupDistances> distances =
        degrees(sample, moments) < rules.thresholds().degreesNeeded()
            ? Outcome.none("Too few animals have this set.", "Leave out measurements.")
            : GroupDistances.of(moments);
    return new Fit(sample, unit, moments, distances, model);
  }

  /** Fits of a bone that has the set, largest share first; never none. */
  Outcome<List<TaxonFit>> fits(BoneRow bone) {
    double[] x = sample.numbers(bone);
    return distances.then(
        d -> model.then(m -> Outcome.of(Fits.of(sample.taxa(), m.shares(x), d.to(x)))));
  }

  /** n − k − p + 1, the degrees of freedom that typicality rests on. */
  static int degrees(Sample sample, GroupMoments moments) {
    return moments.degreesOfFreedom() - sample.columns() + 1;
  }
}
