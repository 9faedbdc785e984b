package org.comparanda.tally;

import java.util.List;
import org.comparanda.taxon.TaxonName;

/**
 * The counts of one taxon at one place.
 *
 * @param nisp number of identified specimens
 * @param mni minimum number of individuals
 * @param elements by element, in alphabetical order
 * @param steps how each number came about, one sentence a step
 */
public record TaxonTally(
    TaxonName taxon, int nisp, int mni, List<ElementTally> elements, List<String> steps) {
  public TaxonTally {
    elements = List.copyOf(elements);
    steps = List.copyOf(steps);
  }
}
