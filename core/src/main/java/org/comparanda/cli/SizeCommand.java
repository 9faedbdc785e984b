package org.comparanda.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.comparanda.exchange.table.TableOptions;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Fits a size line on the shelf, or takes a published equation, and estimates every bone by it. */
@Command(
    name = "size",
    description = {
      "Fit a size line on the shelf and estimate by it: body length, body mass or another"
          + " measurement, with its prediction interval. Or estimate by a published equation.",
      "Measurements of several elements are written humerus.GL; bones that share an animal are then"
          + " taken together."
    },
    mixinStandardHelpOptions = true)
final class SizeCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private ShelfArguments shelf = new ShelfArguments();
  @Mixin private TableArguments tables = new TableArguments();
  @Mixin private JsonArgument json = new JsonArgument();
  @Mixin private LineArguments line = new LineArguments();
  @Mixin private SizeByEquation equations = new SizeByEquation();

  @Option(
      names = "--bones",
      paramLabel = "BONES",
      description = "Table of the bones to be estimated.")
  private @Nullable Path bones;

  @Option(
      names = "--diagnostics",
      description =
          "Tell whether the line can be trusted: leverage, Cook's distance, PRESS, normality, equal"
              + " spread, taxa left out, held-out coverage.")
  private boolean diagnostics;

  @Option(
      names = "--undecided",
      description =
          "The taxon of the bones is not decided: compare each with the shelf (by --from and"
              + " --only) and mix the candidates' own lines by their shares.")
  private boolean undecided;

  SizeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    if (equations.asked()) {
      return equations.run(shelf.words(terminal), this::tables, line, json.file(), terminal);
    }
    SizeTables read = tables(line.named());
    SizeByLine byLine =
        SizeByLine.of(
            read, line, undecided ? SizeByLine.Taxon.UNDECIDED : SizeByLine.Taxon.AS_ASKED);
    line.olderNames(read.opened().tables().taxa()).forEach(terminal::note);
    return (diagnostics ? byLine.withChecks() : byLine).write(terminal, json.file());
  }

  /** Only what the question names is read, and what {@code --only} adds. */
  private SizeTables tables(Set<String> names) {
    Set<String> named = new LinkedHashSet<>(names);
    named.addAll(tables.only());
    TableOptions options =
        tables
            .options()
            .withOnly(List.copyOf(named))
            .withTaxa(undecided ? TableOptions.Taxa.NEEDED : TableOptions.Taxa.OPTIONAL)
            .withNumbers(line.numbers());
    return SizeTables.read(terminal, shelf, tables, options, Optional.ofNullable(bones));
  }
}
