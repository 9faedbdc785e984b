package org.comparanda.suggestion;

import java.util.Arrays;
import java.util.List;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.discriminant.ConformalRank;
import org.comparanda.statistics.discriminant.ConformalWithHoles;
import org.comparanda.statistics.discriminant.GroupDistance;
import org.comparanda.statistics.discriminant.GroupMoments;
import org.comparanda.statistics.discriminant.Maximisation;
import org.comparanda.statistics.discriminant.RowsWithHoles;
import org.comparanda.taxon.TaxonName;

/**
 * The animals that have any measurement of a set, one of them out, their holes filled by
 * expectation and maximisation: where too few have the whole set.
 *
 * <p>Typicality is a rank here, since F needs whole rows: the taxon's own where that can go below
 * the bar of "nothing here fits", otherwise pooled over the taxa.
 */
final class Filled {
  private static final Maximisation HOW = Maximisation.withDefaults();
  private static final int BONES_KEPT = 4;

  private final Thresholds limits;
  private final GroupMoments moments;
  private final int[] standsOn;
  private final List<TaxonName> untold;
  private final Memo<List<Double>, Outcome<List<ConformalRank>>> ranks;

  private Filled(
      Thresholds limits,
      GroupMoments moments,
      int[] standsOn,
      List<TaxonName> untold,
      Memo<List<Double>, Outcome<List<ConformalRank>>> ranks) {
    this.limits = limits;
    this.moments = moments;
    this.standsOn = standsOn;
    this.untold = untold;
    this.ranks = ranks;
  }

  /**
   * Fills the holes. Not estimable where the two measurements that are rarest together would not
   * carry a fit themselves, or where the ranks of so few animals could not even tell a poor fit.
   *
   * @param rows without the animal that is out
   * @param taxa of the groups
   */
  static Outcome<Filled> of(RowsWithHoles rows, List<TaxonName> taxa, Thresholds limits) {
    RowsWithHoles told = rows.withoutUntoldGroups();
    int[] standsOn = told.fewestTogether();
    int degrees = Arrays.stream(standsOn).sum() - present(told) - told.columns() + 1;
    if (degrees < limits.degreesNeeded() || (comparable(told) + 1) * limits.poorFit() <= 1) {
      return Outcome.none("Too few animals have any of this set.", "Leave out measurements.");
    }
    List<TaxonName> untold =
        taxa.stream()
            .filter(t -> rows.count(taxa.indexOf(t)) > 0 && told.count(taxa.indexOf(t)) == 0)
            .toList();
    return HOW.fit(told)
        .then(
            moments ->
                Outcome.of(new Filled(limits, moments, standsOn, untold, ranks(told, moments))));
  }

  private static Memo<List<Double>, Outcome<List<ConformalRank>>> ranks(
      RowsWithHoles rows, GroupMoments moments) {
    ConformalWithHoles conformal = ConformalWithHoles.of(rows, HOW, moments);
    return new Memo<>(
        BONES_KEPT, x -> conformal.ranks(x.stream().mapToDouble(Double::doubleValue).toArray()));
  }

  private static int present(RowsWithHoles rows) {
    int present = 0;
    for (int group = 0; group < rows.groups(); group++) {
      present += rows.count(group) > 0 ? 1 : 0;
    }
    return present;
  }

  /** Rows that a pooled rank can always be among: those of groups with more than one. */
  private static int comparable(RowsWithHoles rows) {
    int comparable = 0;
    for (int group = 0; group < rows.groups(); group++) {
      comparable += rows.count(group) > 1 ? rows.count(group) : 0;
    }
    return comparable;
  }

  /** The moments as if there were no holes, without any spread between sides. */
  GroupMoments moments() {
    return moments;
  }

  /** The same as they count for shares: standing on the animals of the rarest two measurements. */
  GroupMoments forShares() {
    return moments.standingOn(standsOn);
  }

  /** Taxa with animals of which some measurement of the set was never taken: in no fit. */
  List<TaxonName> untold() {
    return untold;
  }

  /** Full conformal ranks of a row. */
  Outcome<List<ConformalRank>> ranks(double... x) {
    return ranks.of(Arrays.stream(x).boxed().toList());
  }

  /** The distances with ranks for typicalities. */
  Outcome<List<GroupDistance>> ranked(List<GroupDistance> distances, double... x) {
    return ranks(x).then(all -> Outcome.of(distances.stream().map(d -> ranked(d, all)).toList()));
  }

  private GroupDistance ranked(GroupDistance distance, List<ConformalRank> all) {
    double rank =
        all.stream()
            .filter(r -> r.group() == distance.group())
            .findFirst()
            .orElseThrow()
            .typicality(limits.nothingFits());
    return new GroupDistance(distance.group(), distance.rows(), distance.squared(), rank);
  }

  /** Below this no typicality can go, whatever the numbers: the largest of the taxa's bounds. */
  Outcome<Double> lowest(double... x) {
    return ranks(x)
        .then(
            all ->
                Outcome.of(
                    all.stream()
                        .mapToDouble(r -> r.lowest(limits.nothingFits()))
                        .max()
                        .orElseThrow()));
  }
}
