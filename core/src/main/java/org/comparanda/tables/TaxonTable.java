package org.comparanda.tables;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.taxon.Growth;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/** Reads the taxon tree; a parent stands above its children, so there can be no ring. */
final class TaxonTable {
  private TaxonTable() {}

  /** Errors: {@link BrokenTable} naming file, row and field. */
  static TaxonTree read(TableFile file) {
    List<TableRow> rows = file.rows("taxa");
    ProtocolTables.requireOnce(rows, "name");
    Set<TaxonName> above = new HashSet<>();
    List<Taxon> taxa = new ArrayList<>();
    for (TableRow row : rows) {
      Taxon taxon = taxon(row);
      if (taxon.parent().isPresent() && !above.contains(taxon.parent().get())) {
        throw row.broken("parent", "\"" + taxon.parent().get() + "\" has no row above this one");
      }
      above.add(taxon.name());
      taxa.add(taxon);
    }
    List<Set<TaxonName>> groups =
        file.rows("lookAlikes").stream().map(row -> lookAlikes(row, above)).toList();
    return new TaxonTree(taxa, groups);
  }

  private static Taxon taxon(TableRow row) {
    return new Taxon(
        new TaxonName(row.text("name")),
        row.textOrEmpty(row.said("commonName")),
        row.textOrEmpty("author"),
        row.text("rank"),
        row.has("parent") ? Optional.of(new TaxonName(row.text("parent"))) : Optional.empty(),
        row.word("growth", Growth.class),
        row.truth("humanMixUp"),
        row.text("source"));
  }

  private static Set<TaxonName> lookAlikes(TableRow row, Set<TaxonName> known) {
    row.text("source");
    Set<TaxonName> group = new LinkedHashSet<>();
    for (String name : row.texts("taxa")) {
      if (!known.contains(new TaxonName(name))) {
        throw row.broken("taxa", "\"" + name + "\" has no row in the taxon tree");
      }
      group.add(new TaxonName(name));
    }
    if (group.size() < 2) {
      throw row.broken("taxa", "A group of look-alikes needs two taxa");
    }
    return group;
  }
}
