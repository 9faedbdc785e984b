package org.comparanda.tables;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.Protocol;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.comparanda.tray.Trait;

/** Reads the traits of look-alike pairs. */
public final class TraitTable {
  private static final int MOST_A_PAIR = 3;

  private TraitTable() {}

  /** The traits packed with the program, asked in a language. Errors: {@link BrokenTable}. */
  public static List<Trait> shipped(Locale language, Protocol protocol, TaxonTree taxa) {
    return read(TableFile.shipped("traits.json", language), protocol, taxa);
  }

  /** Errors: {@link BrokenTable} naming file, row and field. */
  static List<Trait> read(TableFile file, Protocol protocol, TaxonTree taxa) {
    List<TableRow> rows = file.rows("traits");
    ProtocolTables.requireOnce(rows, "key");
    List<Trait> traits = new ArrayList<>();
    Map<Set<TaxonName>, Integer> counts = new HashMap<>();
    for (TableRow row : rows) {
      if (pair(row, taxa).stream().distinct().count() == 1) {
        continue; // the house made the two one taxon: there is nothing to tell apart
      }
      Trait trait = trait(row, protocol, taxa);
      if (counts.merge(Set.copyOf(trait.taxa()), 1, Integer::sum) > MOST_A_PAIR) {
        throw row.broken("taxa", "A pair has at most " + MOST_A_PAIR + " traits");
      }
      traits.add(trait);
    }
    return List.copyOf(traits);
  }

  private static List<TaxonName> pair(TableRow row, TaxonTree taxa) {
    return row.texts("taxa").stream().map(TaxonName::new).map(taxa::accepted).toList();
  }

  private static Trait trait(TableRow row, Protocol protocol, TaxonTree taxa) {
    List<TaxonName> pair = pair(row, taxa);
    if (pair.size() != 2 || !taxa.lookAlikesOf(pair.get(0)).contains(pair.get(1))) {
      throw row.broken("taxa", "No pair of look-alikes: " + pair);
    }
    ElementKey element = new ElementKey(row.text("element"));
    if (protocol.element(element).isEmpty()) {
      throw row.broken("element", "\"" + element + "\" is no element");
    }
    TaxonName yes = taxa.accepted(new TaxonName(row.text("yes")));
    if (!pair.contains(yes)) {
      throw row.broken("yes", "\"" + yes + "\" is none of the pair");
    }
    return new Trait(
        row.text("key"),
        pair,
        element,
        row.text(row.said("look")),
        row.text(row.said("question")),
        yes,
        row.text(row.said("source")));
  }
}
