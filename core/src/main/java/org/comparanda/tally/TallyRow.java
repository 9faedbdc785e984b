package org.comparanda.tally;

import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.taxon.TaxonName;

/**
 * One line of what was counted.
 *
 * @param place where the bones lie together; animals are counted within one place
 * @param taxon as called, at species or an agreed group
 * @param count number of specimens, at least 1; parts that were refitted are one specimen
 */
public record TallyRow(
    String place, TaxonName taxon, ElementKey element, Side side, Portion portion, int count) {
  public TallyRow {
    if (count < 1) {
      throw new IllegalArgumentException(
          "A count is at least 1, got " + count + " for " + taxon + ", " + element + ".");
    }
  }
}
