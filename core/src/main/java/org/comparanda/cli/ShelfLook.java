package org.comparanda.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.comparanda.exchange.table.ColumnGuess;
import org.comparanda.exchange.table.TablePreview;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.tables.ColumnWordTable;
import org.comparanda.tables.ReferenceTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Looks at a table before anything is read: a guess for each column. */
@Command(
    name = "look",
    description = {
      "Look at a table: what each column seems to be, and the words of shelf add that say so."
          + " These",
      "are guesses; nothing is read or stored."
    },
    mixinStandardHelpOptions = true)
final class ShelfLook implements Callable<Integer> {
  private static final int EXAMPLES = 3;

  private final Terminal terminal;

  @Parameters(paramLabel = "TABLE", description = "CSV or .xlsx.")
  private Path table = Path.of("");

  @Mixin private TableArguments tables = new TableArguments();

  ShelfLook(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    ReferenceTables words = ReferenceTables.shipped();
    TablePreview seen =
        TableReader.of(words.protocol(), words.taxa(), tables.options())
            .preview(table, ColumnWordTable.shipped())
            .fold(
                read -> read.content(),
                report -> {
                  throw new CannotDo(report.lines());
                });
    terminal.say(
        seen.layout()
            + (seen.belowTitle()
                ? "; the header seems to stand in row "
                    + seen.headerRow()
                    + ", below a title (another row: --header-row N)"
                : ""));
    for (int i = 0; i < seen.columns().size(); i++) {
      ColumnGuess guess = seen.columns().get(i);
      int column = i;
      terminal.say(
          "  "
              + guess.header()
              + ": "
              + guess
                  .role()
                  .map(role -> role + " (" + why(guess.why()) + ")")
                  .orElse(
                      seen.holdsNumbers(column)
                          ? "not known; numbers, which --register brings as a measurement"
                          : "not known")
              + guess.unit().map(u -> ", in " + u.symbol()).orElse("")
              + "   e.g. "
              + String.join(
                  " | ",
                  seen.rows().stream()
                      .limit(EXAMPLES)
                      .map(row -> row.size() > column ? row.get(column) : "")
                      .toList()));
    }
    words(seen).ifPresent(line -> terminal.say("shelf add " + table.getFileName() + line));
    return Terminal.FINE;
  }

  private static String why(ColumnGuess.Why why) {
    return why.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static java.util.Optional<String> words(TablePreview seen) {
    List<String> as = new ArrayList<>();
    List<String> leave = new ArrayList<>();
    List<String> units = new ArrayList<>();
    for (ColumnGuess guess : seen.columns()) {
      guess
          .role()
          .filter(role -> !role.equals(guess.name()))
          .ifPresent(role -> as.add(role + "=" + guess.header()));
      if (guess.role().isEmpty() && !seen.holdsNumbers(seen.columns().indexOf(guess))) {
        leave.add(guess.header());
      }
      if (guess.role().isPresent() && !guess.statesUnit()) {
        guess.unit().ifPresent(u -> units.add(guess.role().get() + "=" + u.symbol()));
      }
    }
    boolean brings =
        IntStream.range(0, seen.columns().size())
            .anyMatch(i -> seen.columns().get(i).role().isEmpty() && seen.holdsNumbers(i));
    String line =
        (seen.belowTitle() ? " --header-row " + seen.headerRow() : "")
            + word(" --as ", as)
            + word(" --leave ", leave)
            + word(" --unit ", units)
            + (brings ? " --register" : "");
    return line.isEmpty() ? java.util.Optional.empty() : java.util.Optional.of(line);
  }

  private static String word(String option, List<String> values) {
    return values.isEmpty() ? "" : option + "\"" + String.join(",", values) + "\"";
  }
}
