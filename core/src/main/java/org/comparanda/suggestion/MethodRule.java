package org.comparanda.suggestion;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.statistics.discriminant.Discriminant;
import org.comparanda.statistics.discriminant.GroupMoments;
import org.comparanda.statistics.discriminant.GroupedRows;
import org.comparanda.statistics.discriminant.Linear;
import org.comparanda.statistics.discriminant.PairedGain;
import org.comparanda.statistics.discriminant.Predictive;
import org.comparanda.statistics.discriminant.Priors;
import org.comparanda.statistics.discriminant.ShrunkPooled;
import org.comparanda.taxon.TaxonName;

/**
 * The rule behind {@link Method#AUTO}: pooled shrinkage where there are fewer than ten animals for
 * each measurement, predictive where a taxon or a measurement has fewer than ten, linear otherwise.
 * A method for few animals is passed over where plain linear shares are clearly better on the
 * shelf's own animals held out. Reasons and figures: docs/decisions/0010.
 */
final class MethodRule {
  /** Animals in a taxon, and animals beyond the taxa for each measurement, that are many. */
  private static final int MANY = 10;

  private final GroupedRows rows;
  private final List<TaxonName> taxa;

  private MethodRule(GroupedRows rows, List<TaxonName> taxa) {
    this.rows = rows;
    this.taxa = taxa;
  }

  /** Asked of the whole sample, so that one trial has one method. */
  static MethodChoice of(GroupedRows rows, List<TaxonName> taxa) {
    return new MethodRule(rows, taxa).choice();
  }

  private MethodChoice choice() {
    Optional<String> fewEach = fewForEachMeasurement();
    Optional<String> few = smallTaxon().or(() -> fewEach);
    if (few.isEmpty()) {
      return chosen(new Linear(), "no taxon and no measurement has fewer than 10 animals");
    }
    if (fewEach.isPresent() && !plainIsBetterThan(new ShrunkPooled())) {
      return chosen(new ShrunkPooled(), fewEach.get());
    }
    return plainIsBetterThan(new Predictive())
        ? chosen(new Linear(), few.get() + ", yet linear was clearly better held out")
        : chosen(new Predictive(), few.get());
  }

  private static MethodChoice chosen(Discriminant method, String why) {
    return new MethodChoice(method, method.name() + ", by rule: " + why);
  }

  private boolean plainIsBetterThan(Discriminant other) {
    return PairedGain.of(rows, new Linear(), other, Priors.equal(rows.groups()))
        .fold(PairedGain::clear, none -> false);
  }

  private Optional<String> fewForEachMeasurement() {
    int degrees = GroupMoments.of(rows).degreesOfFreedom();
    return degrees < MANY * rows.columns()
        ? Optional.of(
            "n − k = %d is below %d × %d measurements".formatted(degrees, MANY, rows.columns()))
        : Optional.empty();
  }

  private Optional<String> smallTaxon() {
    int fewest =
        IntStream.range(0, rows.groups()).map(rows::count).filter(n -> n > 0).min().orElse(MANY);
    return IntStream.range(0, rows.groups())
        .filter(g -> fewest < MANY && rows.count(g) == fewest)
        .mapToObj(g -> "%s has fewer than %d animals (%d)".formatted(taxa.get(g), MANY, fewest))
        .findFirst();
  }
}
