package org.comparanda.cli;

import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonTree;

/** The reference tables with a collection's own names of taxa in them. */
final class HouseTables {
  private HouseTables() {}

  static ReferenceTables of(Collection opened) {
    ReferenceTables shipped = ReferenceTables.shipped();
    return shipped.withTaxa(tree(opened, shipped));
  }

  static TaxonTree tree(Collection opened, ReferenceTables shipped) {
    return opened.names().all().on(shipped.taxa()).value().orElse(shipped.taxa());
  }
}
