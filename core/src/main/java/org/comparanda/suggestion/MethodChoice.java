package org.comparanda.suggestion;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.discriminant.Discriminant;
import org.comparanda.statistics.discriminant.DiscriminantModel;
import org.comparanda.statistics.discriminant.Discriminants;
import org.comparanda.statistics.discriminant.Forest;
import org.comparanda.statistics.discriminant.GroupMoments;
import org.comparanda.statistics.discriminant.GroupedRows;
import org.comparanda.statistics.discriminant.Linear;
import org.comparanda.statistics.discriminant.MomentDiscriminant;
import org.comparanda.statistics.discriminant.Nearest;
import org.comparanda.statistics.discriminant.Predictive;
import org.comparanda.statistics.discriminant.Priors;
import org.comparanda.statistics.discriminant.Quadratic;
import org.comparanda.statistics.discriminant.ShrunkPerGroup;
import org.comparanda.statistics.discriminant.ShrunkPooled;
import org.comparanda.taxon.TaxonName;

/**
 * The method that a sample is compared by, with the reason in words. Decided on the whole sample,
 * so that one trial has one method.
 */
record MethodChoice(Discriminant method, String reason) {

  static MethodChoice of(GroupedRows rows, List<TaxonName> taxa, Method asked) {
    return switch (asked) {
      case AUTO -> MethodRule.of(rows, taxa);
      case LINEAR -> chosen(new Linear());
      case PREDICTIVE -> chosen(new Predictive());
      case QUADRATIC -> chosen(new Quadratic());
      case REGULARISED -> chosen(Discriminants.regularised());
      case SHRUNK_POOLED -> chosen(new ShrunkPooled());
      case SHRUNK_PER_TAXON -> chosen(new ShrunkPerGroup());
      case NEAREST -> chosen(Discriminants.nearest());
      case NEAREST_ONE -> chosen(new Nearest(1, Nearest.Scaling.NONE));
      case FOREST -> chosen(Forest.withDefaults());
    };
  }

  /** The method of a house's own choice for this element. */
  static MethodChoice ofHouse(GroupedRows rows, List<TaxonName> taxa, Method chosen) {
    Discriminant method = of(rows, taxa, chosen).method();
    return new MethodChoice(method, method.name() + ", the house's choice for this element");
  }

  /** The method where holes are filled: one that needs means and a spread only. */
  static Outcome<MethodChoice> withHoles(Method asked) {
    return switch (asked) {
      case LINEAR -> Outcome.of(chosen(new Linear()));
      case PREDICTIVE -> Outcome.of(chosen(new Predictive()));
      case AUTO ->
          Outcome.of(
              new MethodChoice(
                  new Predictive(),
                  "predictive, by rule: with holes filled, counted as the animals of the two"
                      + " measurements that are rarest together"));
      case QUADRATIC, REGULARISED, SHRUNK_POOLED, SHRUNK_PER_TAXON, NEAREST, NEAREST_ONE, FOREST ->
          Outcome.none(
              "The method asked for needs animals with the whole set.",
              "Leave out measurements, or choose linear or predictive.");
    };
  }

  /** The model of moments alone; not estimable for a method that needs the rows. */
  Outcome<DiscriminantModel> ofMoments(GroupMoments moments, Priors priors) {
    return method instanceof MomentDiscriminant quick
        ? quick.fitMoments(moments, priors)
        : Outcome.none(method.name() + " needs animals with the whole set.", "Leave out some.");
  }

  /** The reason with how strongly a covariance was pulled, where it was. */
  String reasonWith(List<Double> shrinkage) {
    return shrinkage.isEmpty()
        ? reason
        : reason
            + "; pulled by "
            + shrinkage.stream()
                .map(s -> String.format(Locale.ROOT, "%.2f", s))
                .collect(Collectors.joining(", "));
  }

  private static MethodChoice chosen(Discriminant method) {
    return new MethodChoice(method, method.name() + ", as chosen");
  }
}
