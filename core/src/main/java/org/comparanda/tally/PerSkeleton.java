package org.comparanda.tally;

import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Symmetry;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/** How often an element occurs in one skeleton of a taxon. */
@FunctionalInterface
public interface PerSkeleton {
  /** The number and whether it comes in pairs, or why it isn't known. */
  Outcome<Occurrence> of(TaxonName taxon, ElementKey element);

  /**
   * Occurrence of an element.
   *
   * @param number times in one skeleton, at least 1
   * @param symmetry sided elements have half of the number on each side
   */
  record Occurrence(int number, Symmetry symmetry) {
    public Occurrence {
      if (number < 1) {
        throw new IllegalArgumentException("An element occurs at least once, got " + number + ".");
      }
    }
  }
}
