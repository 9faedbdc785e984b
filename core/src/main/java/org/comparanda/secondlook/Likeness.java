package org.comparanda.secondlook;

import java.util.Optional;
import org.comparanda.taxon.TaxonName;

/**
 * How two calls on one bone stand to each other.
 *
 * @param group the lowest group that holds both; empty when only the root does
 */
public record Likeness(Kind kind, Optional<TaxonName> group) {
  /** The three ways. */
  public enum Kind {
    /** The same taxon; cf., aff. and ? count as the taxon they stand with. */
    AGREE,
    /** One is a group around the other. */
    AGREE_AT_GROUP,
    /** Neither holds the other. */
    DIFFER
  }
}
