package org.comparanda.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.comparanda.storage.Collection;
import org.comparanda.taxon.HouseNames;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The names that a collection knows. */
@Command(
    name = "list",
    description = {
      "List the names that a collection knows, with authority, rank, place in the tree, synonyms",
      "and animals. An old name finds the taxon that it is now."
    },
    mixinStandardHelpOptions = true)
final class TaxaList implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(
      arity = "0..1",
      paramLabel = "WORDS",
      description = "Only names, synonyms and plain names that hold this.")
  private String words = "";

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  TaxaList(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = Collection.open(collection, terminal.clock())) {
      HouseNames names = opened.names().all();
      TaxonTree tree = HouseTables.of(opened).taxa();
      List<TaxonName> recorded =
          opened.animals().shelf().animals().stream()
              .flatMap(animal -> animal.taxon().stream())
              .toList();
      String wanted = words.toLowerCase(Locale.ROOT);
      tree.taxa().stream()
          .filter(taxon -> !taxon.rank().equals("synonym"))
          .map(taxon -> line(taxon, tree, names, recorded))
          .filter(line -> line.toLowerCase(Locale.ROOT).contains(wanted))
          .forEach(terminal::say);
    }
    return Terminal.FINE;
  }

  private static String line(
      Taxon taxon, TaxonTree tree, HouseNames names, List<TaxonName> recorded) {
    String synonyms =
        names.synonymsOf(taxon.name()).stream()
            .map(TaxonName::value)
            .collect(Collectors.joining(", "));
    long animals = recorded.stream().filter(taxon.name()::equals).count();
    return taxon.name()
        + (taxon.author().isEmpty() ? "" : " " + taxon.author())
        + (taxon.rank().isEmpty() ? "" : ", " + taxon.rank())
        + (taxon.commonName().isEmpty() ? "" : " (" + taxon.commonName() + ")")
        + ", under "
        + tree.lineage(taxon.name()).stream()
            .skip(1)
            .map(TaxonName::value)
            .collect(Collectors.joining(" < "))
        + (synonyms.isEmpty() ? "" : "; synonyms: " + synonyms)
        + (animals == 0 ? "" : "; " + Count.of(animals, "animal"));
  }
}
