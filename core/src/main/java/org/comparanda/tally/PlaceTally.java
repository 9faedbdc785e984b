package org.comparanda.tally;

import java.util.List;

/** The counts of one place. Minimum numbers of different places are never added. */
public record PlaceTally(String place, List<TaxonTally> taxa) {
  public PlaceTally {
    taxa = List.copyOf(taxa);
  }
}
