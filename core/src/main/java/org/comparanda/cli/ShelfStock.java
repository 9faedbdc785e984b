package org.comparanda.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import org.comparanda.bone.ElementKey;
import org.comparanda.exchange.json.ShelfJson;
import org.comparanda.stock.HardPair;
import org.comparanda.stock.Stock;
import org.comparanda.suggestion.Comparison;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How many animals the shelf holds of each taxon and element. */
@Command(
    name = "stock",
    description = "How many animals of each taxon and element the shelf holds.",
    mixinStandardHelpOptions = true)
final class ShelfStock implements Callable<Integer> {
  private final Terminal terminal;

  @Option(
      names = "--pairs",
      description = "Instead, which taxa an element doesn't tell apart, and what to measure then.")
  private boolean pairs;

  @Option(
      names = "--taxon",
      split = ",",
      paramLabel = "NAME",
      description = "Only these taxa, or those of these groups; an old name is understood.")
  private List<String> only = new ArrayList<>();

  @Mixin private ShelfArguments shelf = new ShelfArguments();
  @Mixin private TableArguments tables = new TableArguments();
  @Mixin private JsonArgument json = new JsonArgument();

  ShelfStock(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    ShelfArguments.Opened opened = shelf.open(terminal, tables.options()).of(tables.element());
    Predicate<TaxonName> which = chosen(opened);
    Stock stock = Stock.of(opened.shelf().only(animal -> animal.taxon().filter(which).isPresent()));
    if (pairs) {
      pairs(opened, which);
    } else if (json.file().isPresent()) {
      JsonArgument.write(json.file().get(), out -> ShelfJson.stock(out, stock));
    } else {
      matrix(stock);
    }
    return Terminal.FINE;
  }

  /** Which taxa are asked for; all where none is named. Errors: {@link CannotDo} where none is. */
  private Predicate<TaxonName> chosen(ShelfArguments.Opened opened) {
    TaxonTree tree = opened.tables().taxa();
    List<TaxonName> names = only.stream().map(String::strip).map(TaxonName::new).toList();
    for (TaxonName name : names) {
      tree.standsUnder(name).ifPresent(terminal::note);
      if (opened.shelf().taxa().stream().noneMatch(taxon -> tree.within(taxon, name))) {
        throw new CannotDo(
            "--taxon \""
                + name
                + "\": no animal on the shelf is of it. Nothing was counted. Look at taxa list.");
      }
    }
    return taxon -> names.isEmpty() || names.stream().anyMatch(name -> tree.within(taxon, name));
  }

  private void pairs(ShelfArguments.Opened opened, Predicate<TaxonName> which) throws IOException {
    Comparison comparison =
        Comparison.of(
            opened.shelf(), opened.protocol(), opened.tables().taxa(), opened.rules().comparison());
    List<HardPair> hard =
        HardPair.of(comparison, Stock.of(opened.shelf())).stream()
            .filter(pair -> which.test(pair.one()) || which.test(pair.other()))
            .toList();
    if (json.file().isPresent()) {
      JsonArgument.write(json.file().get(), out -> ShelfJson.pairs(out, hard));
    } else {
      hard.forEach(pair -> terminal.say(pair.sentence()));
      terminal.note(Count.of(hard.size(), "pair") + " mixed up in 10 of 100 animals or more.");
    }
  }

  private void matrix(Stock stock) {
    int name = stock.taxa().stream().mapToInt(t -> t.value().length()).max().orElse(0);
    StringBuilder head = new StringBuilder(" ".repeat(name));
    stock.elements().forEach(e -> head.append("  ").append(e));
    terminal.say(head.toString());
    for (TaxonName taxon : stock.taxa()) {
      StringBuilder row = new StringBuilder(taxon.value());
      row.append(" ".repeat(name - taxon.value().length()));
      for (Stock.Cell cell : stock.cells()) {
        if (cell.taxon().equals(taxon)) {
          row.append(column(cell.element(), cell.animals()));
        }
      }
      terminal.say(row.toString());
    }
  }

  private static String column(ElementKey element, int animals) {
    String number = String.valueOf(animals);
    return " ".repeat(Math.max(1, element.value().length() + 2 - number.length())) + number;
  }
}
