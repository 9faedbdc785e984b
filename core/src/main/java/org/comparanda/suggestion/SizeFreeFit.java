package org.comparanda.suggestion;

import org.comparanda.taxon.TaxonName;

/**
 * How one taxon fits when size counts for nothing, and when nothing else counts, beside {@link
 * TaxonFit} where it counts.
 *
 * @param byProportions typicality by proportions alone, 0 to 1
 * @param sizeAdjusted typicality when the direction in which a taxon's own animals differ most is
 *     taken out as well, 0 to 1
 * @param bySize typicality by size alone (the mean of the logs), 0 to 1
 */
public record SizeFreeFit(
    TaxonName taxon, double byProportions, double sizeAdjusted, double bySize) {}
