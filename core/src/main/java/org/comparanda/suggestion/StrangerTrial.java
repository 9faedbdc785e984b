package org.comparanda.suggestion;

import java.util.List;
import org.comparanda.taxon.TaxonName;

/**
 * Each taxon off the shelf in turn, its animals offered to the rest, beside the shelf's own animals
 * held out: how often a stranger is taken for a known taxon.
 */
public record StrangerTrial(Trial trial, Known known, Stranger stranger, List<Stranger> taxa) {
  public StrangerTrial {
    taxa = List.copyOf(taxa);
  }

  /** Animals of the shelf held out: answered as one taxon before the gate, rightly or wrongly. */
  public record Known(int bones, int fitsOneRight, int fitsOneWrong) {}

  /**
   * Animals whose taxon is off the shelf.
   *
   * @param taxon the taxon taken off; for the sum over all, a name that says so
   * @param fitsOne answered {@code FITS_ONE}
   * @param plainShare95 largest share 0.95 or more, whatever the typicality
   * @param nothingFits answered {@code NOTHING_FITS}
   */
  public record Stranger(
      TaxonName taxon, int bones, int fitsOne, int plainShare95, int nothingFits) {}
}
