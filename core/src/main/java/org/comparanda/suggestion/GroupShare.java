package org.comparanda.suggestion;

import org.comparanda.taxon.TaxonName;

/**
 * A group of the taxon tree with the shares of its taxa added up.
 *
 * @param group a group that holds two or more taxa of the fit, never the root
 * @param rank its rank as the tree has it
 * @param share sum of the shares below it
 * @param taxa how many taxa of the fit it holds
 */
public record GroupShare(TaxonName group, String rank, double share, int taxa) {}
