package org.comparanda.suggestion;

import org.comparanda.taxon.TaxonName;

/**
 * How one taxon of the shelf fits the bone. Share and typicality belong together: neither is ever
 * shown alone.
 *
 * @param share posterior probability among the taxa on the shelf, 0 to 1
 * @param typicality chance that a true member lies at least this far from its centre, 0 to 1
 * @param distanceSquared squared Mahalanobis distance from the taxon's mean
 * @param animals animals of the taxon in this fit
 */
public record TaxonFit(
    TaxonName taxon, double share, double typicality, double distanceSquared, int animals) {
  /** Whether the taxon has so few animals that it stays in play with the pooled spread only. */
  public boolean thin() {
    return animals < 5;
  }
}
