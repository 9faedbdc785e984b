package org.comparanda.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.exchange.table.TaxonList;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.HouseNames;
import org.comparanda.taxon.HouseTaxon;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Brings names in from a file, all of it or nothing. */
@Command(
    name = "add",
    description = {
      "Bring names in from a table with Darwin Core terms (scientificName, taxonID,",
      "scientificNameAuthorship, taxonRank, parentNameUsage[ID], acceptedNameUsage[ID],",
      "taxonomicStatus, vernacularName): all of it, or nothing and a line for each thing wrong."
    },
    mixinStandardHelpOptions = true)
final class TaxaAdd implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "CSV or tab-separated.")
  private Path file = Path.of("");

  @Option(names = "--dry-run", description = "Only say what would come of it.")
  private boolean dryRun;

  @Mixin private ChangeArguments change = new ChangeArguments();

  TaxaAdd(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    ReferenceTables shipped = ReferenceTables.shipped();
    List<HouseTaxon> taxa = ChangeArguments.done(TaxonList.read(file));
    try (Collection opened = change.open(terminal)) {
      HouseNames before = opened.names().all();
      TaxonTree was = HouseTables.tree(opened, shipped);
      TaxonTree is = ChangeArguments.done(before.with(taxa).on(shipped.taxa()));
      lines(taxa, was, is).forEach(terminal::say);
      if (!dryRun) {
        ChangeArguments.done(opened.names().add(taxa, shipped.taxa(), change.note()));
      }
      terminal.say(
          (dryRun ? "Would bring in " : "Brought in ")
              + Count.of(taxa.size(), "name")
              + (dryRun ? "; nothing was stored." : "."));
      underSynonyms(opened, before.with(taxa));
    }
    return Terminal.FINE;
  }

  private static List<String> lines(List<HouseTaxon> taxa, TaxonTree was, TaxonTree is) {
    List<String> lines = new ArrayList<>();
    for (HouseTaxon taxon : taxa) {
      String now = is.taxon(taxon.name()).map(TaxaAdd::said).orElse("");
      String before = was.taxon(taxon.name()).map(TaxaAdd::said).orElse("new");
      if (!now.equals(before)) {
        lines.add(taxon.name() + ": " + before + " -> " + now);
      }
    }
    return lines;
  }

  private static String said(Taxon taxon) {
    return (taxon.author().isEmpty() ? "no authority" : taxon.author())
        + ", "
        + (taxon.rank().isEmpty() ? "no rank" : taxon.rank())
        + taxon
            .parent()
            .map(p -> (taxon.rank().equals("synonym") ? " of " : " under ") + p)
            .orElse("");
  }

  private void underSynonyms(Collection opened, HouseNames names) {
    for (TaxonName name : opened.animals().shelf().taxa()) {
      TaxonName accepted = names.accepted(name);
      if (!accepted.equals(name)) {
        terminal.note(
            "Animals stand under "
                + name
                + ", a synonym of "
                + accepted
                + ". Rename them with: taxa rename \""
                + name
                + "\" \""
                + accepted
                + "\".");
      }
    }
  }
}
