package org.comparanda.tally;

import java.util.List;
import org.comparanda.statistics.Outcome;
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

  /**
   * MAU in per cent of the largest MAU of this taxon at this place (%MAU); not estimable where the
   * element has no MAU.
   */
  public Outcome<Double> percentMau(ElementTally element) {
    double largest =
        elements.stream()
            .flatMap(e -> e.mau().value().stream())
            .mapToDouble(d -> d)
            .max()
            .orElse(1);
    return element.mau().then(mau -> Outcome.of(100 * mau / largest));
  }
}
