package org.comparanda.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/** Which group's numbers per skeleton hold for a taxon: those of its nearest ancestor named. */
public final class SkeletonGroups {
  private final Map<TaxonName, String> byTaxon;
  private final TaxonTree tree;

  private SkeletonGroups(Map<TaxonName, String> byTaxon, TaxonTree tree) {
    this.byTaxon = byTaxon;
    this.tree = tree;
  }

  /** The groups packed with the program. Errors: {@link BrokenTable}. */
  public static SkeletonGroups shipped(TaxonTree tree) {
    return read(TableFile.shipped("skeleton-groups.json"), tree);
  }

  static SkeletonGroups read(TableFile file, TaxonTree tree) {
    List<TableRow> rows = file.rows("groups");
    ProtocolTables.requireOnce(rows, "taxon");
    Map<TaxonName, String> byTaxon = new LinkedHashMap<>();
    for (TableRow row : rows) {
      row.text("source");
      TaxonName taxon = new TaxonName(row.text("taxon"));
      if (tree.taxon(taxon).isEmpty()) {
        throw row.broken("taxon", "\"" + taxon + "\" has no row in the taxon tree");
      }
      byTaxon.put(tree.accepted(taxon), row.text("group"));
    }
    return new SkeletonGroups(byTaxon, tree);
  }

  /** The group, as the elements of the protocol name it; empty for a taxon in none. */
  public Optional<String> of(TaxonName taxon) {
    return tree.lineage(taxon).stream().filter(byTaxon::containsKey).findFirst().map(byTaxon::get);
  }
}
