package org.comparanda.gui.shelf.keeping;

import org.comparanda.taxon.TaxonName;

/**
 * One name of the tree.
 *
 * @param depth how many stand above it
 * @param synonyms names under which it went
 * @param animals how many stand on the shelf under it
 */
public record TaxonRow(
    TaxonName name,
    int depth,
    String author,
    String rank,
    String plainName,
    String synonyms,
    long animals) {}
