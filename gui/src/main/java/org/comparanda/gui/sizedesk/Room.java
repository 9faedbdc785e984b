package org.comparanda.gui.sizedesk;

import java.util.Locale;
import java.util.function.Supplier;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Shelf;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonTree;

/**
 * What the desk looks at.
 *
 * @param shelf gives the shelf as it is now; asked off the window's thread
 * @param tables protocol and published equations
 * @param taxa as the house names them now
 * @param note small print of every picture (simulated demo data), may be empty
 * @param version the program's version, for the methods paragraph
 */
public record Room(
    Supplier<Shelf> shelf,
    ReferenceTables tables,
    Supplier<TaxonTree> taxa,
    Words words,
    Locale locale,
    String note,
    String version) {
  Protocol protocol() {
    return tables.protocol();
  }

  TaxonTree tree() {
    return taxa.get();
  }
}
