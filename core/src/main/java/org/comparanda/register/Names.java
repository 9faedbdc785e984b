package org.comparanda.register;

import java.util.List;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.HouseNames;
import org.comparanda.taxon.HouseTaxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * Repository of the house's names. Every change stands in the Day Book; the animals follow a new
 * name, calls keep what was written.
 */
public interface Names {
  HouseNames all();

  /** Brings in rows, all of them or none; none when they don't make a tree with what is there. */
  Outcome<HouseNames> add(List<HouseTaxon> taxa, TaxonTree shipped, ChangeNote note);

  /**
   * Renames a taxon; the old name stays as a synonym, and is still found.
   *
   * @return how many animals stand under the new name because of it
   */
  Outcome<Integer> rename(TaxonName from, TaxonName to, TaxonTree shipped, ChangeNote note);

  /** Puts a taxon under another parent. */
  Outcome<HouseNames> move(TaxonName name, TaxonName parent, TaxonTree shipped, ChangeNote note);
}
