package org.comparanda.taxon;

import java.util.Optional;

/**
 * A name that the house brought in itself.
 *
 * @param name scientific name without authority
 * @param author authority, may be empty
 * @param rank may be empty
 * @param parent next higher taxon; empty hangs it on the root
 * @param acceptedAs the accepted name when this one is a synonym
 * @param commonName name in plain words, may be empty
 * @param source where the row comes from
 */
public record HouseTaxon(
    TaxonName name,
    String author,
    String rank,
    Optional<TaxonName> parent,
    Optional<TaxonName> acceptedAs,
    String commonName,
    String source) {
  /** What is known of an accepted taxon, as a row of the house. */
  public static HouseTaxon of(Taxon taxon) {
    return new HouseTaxon(
        taxon.name(),
        taxon.author(),
        taxon.rank(),
        taxon.parent(),
        Optional.empty(),
        taxon.commonName(),
        taxon.source());
  }

  /** A name of which nothing is known. */
  public static HouseTaxon blank(TaxonName name, String source) {
    return new HouseTaxon(name, "", "", Optional.empty(), Optional.empty(), "", source);
  }

  /** The same name as a synonym of another, without a place of its own. */
  public HouseTaxon synonymOf(TaxonName accepted) {
    return new HouseTaxon(
        name, author, rank, Optional.empty(), Optional.of(accepted), commonName, source);
  }

  public HouseTaxon withParent(TaxonName other) {
    return new HouseTaxon(name, author, rank, Optional.of(other), acceptedAs, commonName, source);
  }
}
