package org.comparanda.exchange.csv;

import java.util.List;
import java.util.Optional;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonTree;

/**
 * The names of taxa as a table headed by terms of the Darwin Core class Taxon, as the reader of
 * names takes it: synonyms with the name that is accepted, every other name with its parent.
 */
public final class NameList {
  private static final List<String> TERMS =
      List.of(
          "scientificName",
          "scientificNameAuthorship",
          "taxonRank",
          "parentNameUsage",
          "acceptedNameUsage",
          "taxonomicStatus",
          "vernacularName",
          "nameAccordingTo");

  private NameList() {}

  /** The table. */
  public static String csv(TaxonTree tree) {
    HarmlessCsv csv = new HarmlessCsv();
    csv.row(TERMS);
    tree.taxa().forEach(taxon -> csv.row(cells(taxon, tree)));
    return csv.text();
  }

  private static List<String> cells(Taxon taxon, TaxonTree tree) {
    String above = whole(taxon.parent().flatMap(tree::taxon));
    return List.of(
        whole(Optional.of(taxon)),
        taxon.author(),
        taxon.isSynonym() ? "" : taxon.rank(),
        taxon.isSynonym() ? "" : above,
        taxon.isSynonym() ? above : "",
        taxon.isSynonym() ? "synonym" : "accepted",
        taxon.commonName(),
        taxon.source());
  }

  /** A scientific name stands with its authority. */
  private static String whole(Optional<Taxon> taxon) {
    return taxon.map(t -> (t.name() + " " + t.author()).strip()).orElse("");
  }
}
