package org.comparanda.taxon;

import java.util.Optional;

/**
 * One taxon of the tree.
 *
 * @param name scientific name
 * @param commonName name in plain words, may be empty
 * @param author authority, may be empty
 * @param rank species, genus, family, ...
 * @param parent the next higher taxon; empty for the root
 * @param growth whether its animals stop growing
 * @param humanMixUp whether bones of this kind are often taken for human ones, and the reverse
 * @param source where the row comes from
 */
public record Taxon(
    TaxonName name,
    String commonName,
    String author,
    String rank,
    Optional<TaxonName> parent,
    Growth growth,
    boolean humanMixUp,
    String source) {
  private static final String SYNONYM = "synonym";

  /** Whether this is only another name of its parent. */
  public boolean isSynonym() {
    return rank.equals(SYNONYM);
  }
}
