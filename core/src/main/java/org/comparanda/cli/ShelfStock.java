package org.comparanda.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.bone.ElementKey;
import org.comparanda.exchange.json.ShelfJson;
import org.comparanda.stock.HardPair;
import org.comparanda.stock.Stock;
import org.comparanda.suggestion.Comparison;
import org.comparanda.taxon.TaxonName;
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

  @Mixin private ShelfArguments shelf = new ShelfArguments();
  @Mixin private TableArguments tables = new TableArguments();
  @Mixin private JsonArgument json = new JsonArgument();

  ShelfStock(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    ShelfArguments.Opened opened = shelf.open(terminal, tables.options());
    Stock stock = Stock.of(opened.shelf());
    if (pairs) {
      pairs(opened, stock);
    } else if (json.file().isPresent()) {
      JsonArgument.write(json.file().get(), out -> ShelfJson.stock(out, stock));
    } else {
      matrix(stock);
    }
    return Terminal.FINE;
  }

  private void pairs(ShelfArguments.Opened opened, Stock stock) throws IOException {
    List<HardPair> hard =
        HardPair.of(
            Comparison.of(
                opened.shelf(),
                opened.protocol(),
                opened.tables().taxa(),
                opened.rules().comparison()),
            stock);
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
