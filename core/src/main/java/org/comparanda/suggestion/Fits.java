package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.comparanda.statistics.discriminant.GroupDistance;
import org.comparanda.statistics.discriminant.Shares;
import org.comparanda.taxon.TaxonName;

/** Shares and distances of one bone as fits, largest share first. */
final class Fits {
  private Fits() {}

  /** In order of share; among equal shares the nearer first, then by name. */
  static List<TaxonFit> of(List<TaxonName> taxa, Shares shares, List<GroupDistance> distances) {
    List<TaxonFit> fits = new ArrayList<>();
    for (GroupDistance d : distances) {
      fits.add(
          new TaxonFit(
              taxa.get(d.group()), shares.of(d.group()), d.typicality(), d.squared(), d.rows()));
    }
    fits.sort(
        Comparator.comparingDouble(TaxonFit::share)
            .reversed()
            .thenComparingDouble(TaxonFit::distanceSquared)
            .thenComparing(TaxonFit::taxon));
    return fits;
  }
}
