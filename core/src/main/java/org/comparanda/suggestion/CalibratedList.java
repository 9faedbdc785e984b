package org.comparanda.suggestion;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;
import org.comparanda.statistics.discriminant.ConformalRank;
import org.comparanda.taxon.TaxonName;

/**
 * The taxa that full conformal ranks do not rule out.
 *
 * @param taxa in the order of the fits
 * @param label what the list promises, and on what condition
 */
record CalibratedList(List<TaxonName> taxa, String label) {
  /** Animals offered to see how the lists do; more are taken evenly from the catalogue. */
  private static final int OFFERED = 500;

  CalibratedList {
    taxa = List.copyOf(taxa);
  }

  /** The list of a bone, or an empty one that says why. */
  static CalibratedList of(
      Sample sample, Judgement.Question question, List<TaxonFit> fits, Thresholds limits) {
    double level = 1 - limits.calibratedMiss();
    return ranks(sample, question.unit(), question.bone())
        .fold(
            ranks -> listed(sample, question.unit(), question.offer(), fits, ranks, level),
            none -> new CalibratedList(List.of(), "No calibrated list: " + none.reason()));
  }

  private static CalibratedList listed(
      Sample sample,
      int unit,
      Sample.Offer offer,
      List<TaxonFit> fits,
      List<ConformalRank> ranks,
      double level) {
    List<TaxonName> on = on(sample, ranks, level);
    List<String> pooled =
        ranks.stream()
            .filter(r -> !r.canRuleOut(level))
            .map(r -> sample.taxa().get(r.group()).value())
            .toList();
    boolean filled = sample.filled(unit).value().isPresent();
    String label =
        "holds the true taxon in "
            + Wording.percent(level)
            + " of 100 bones of the kinds on the shelf, if the animals of a taxon are"
            + " exchangeable"
            + (pooled.isEmpty()
                ? ""
                : "; too few animals to rule out by their own ranks, so pooled, needs equal"
                    + " spread: "
                    + Wording.all(pooled))
            + (filled ? "; ranked with the shelf's holes filled, so breakage must be random" : "")
            + (offer == Sample.Offer.ONE_SIDE ? "; approximate for a single side" : "");
    return new CalibratedList(
        fits.stream().map(TaxonFit::taxon).filter(on::contains).toList(), label);
  }

  /** How the lists of a trial's animals do. */
  static Outcome<Trial.ListQuality> quality(
      List<HeldOut> animals, Function<List<MeasurementCode>, Sample> samples, Thresholds limits) {
    double level = 1 - limits.calibratedMiss();
    int step = 1 + (animals.size() - 1) / OFFERED;
    int lists = 0;
    int held = 0;
    int length = 0;
    for (int i = 0; i < animals.size(); i += step) {
      HeldOut row = animals.get(i);
      Sample sample = samples.apply(row.set());
      Optional<List<TaxonName>> on =
          ranks(sample, row.offered().unit(), row.offered().bone())
              .value()
              .map(ranks -> on(sample, ranks, level));
      lists += on.isPresent() ? 1 : 0;
      held += on.filter(list -> list.contains(row.taxon())).isPresent() ? 1 : 0;
      length += on.map(List::size).orElse(0);
    }
    return lists == 0
        ? Outcome.none("Too few animals for any calibrated list.", "Add animals.")
        : Outcome.of(new Trial.ListQuality(new Proportion(held, lists), (double) length / lists));
  }

  private static Outcome<List<ConformalRank>> ranks(Sample sample, int unit, BoneRow bone) {
    double[] x = sample.numbers(bone);
    return sample
        .filled(unit)
        .fold(filled -> filled.ranks(x), none -> sample.conformal(unit).ranks(x));
  }

  private static List<TaxonName> on(Sample sample, List<ConformalRank> ranks, double level) {
    return ranks.stream()
        .filter(r -> r.listed(level))
        .map(r -> sample.taxa().get(r.group()))
        .toList();
  }
}
