package org.comparanda.cli;

import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.comparanda.exchange.table.CardList;
import org.comparanda.exchange.table.Encodings;
import org.comparanda.oldcards.OldCard;
import org.comparanda.statistics.Outcome;
import org.comparanda.storage.Collection;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Brings a legacy list in. */
@Command(
    name = "add",
    description =
        "Bring a legacy list in, each text exactly as found: one card a line, or by --text one a"
            + " row of a table. Blank lines are no cards. Cards that are there already (same list,"
            + " row and text) are not added twice.",
    mixinStandardHelpOptions = true)
final class CardsAdd implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "LIST", description = "Text, CSV or .xlsx.")
  private Path list = Path.of("");

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(names = "--text", paramLabel = "HEADER", description = "The column with the texts.")
  private @Nullable String column;

  @Option(names = "--sheet", paramLabel = "NAME", description = "The sheet of a spreadsheet.")
  private @Nullable String sheet;

  @Option(
      names = "--encoding",
      paramLabel = "NAME",
      description = "How the list was saved, e.g. windows-1252; UTF-8 if not said.")
  private String encoding = "UTF-8";

  CardsAdd(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    CardList saved = CardList.withDefaults().withEncoding(charset());
    Outcome<List<OldCard>> read =
        column == null ? saved.lines(list) : saved.column(list, column, Optional.ofNullable(sheet));
    List<OldCard> cards =
        read.fold(
            all -> all,
            none -> {
              throw CannotDo.because(none);
            });
    try (Collection opened = collection.open(terminal)) {
      int added = opened.oldCards().add(cards);
      int there = cards.size() - added;
      terminal.say(
          "Kept "
              + Count.of(added, "card")
              + " as found"
              + (there == 0 ? "" : "; " + there + " were there already")
              + ". Look at them by: cards shapes, cards list.");
    }
    return Terminal.FINE;
  }

  private Charset charset() {
    try {
      return Charset.forName(encoding);
    } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
      throw new CannotDo(
          "\""
              + encoding
              + "\" is no encoding that is known. Nothing was stored. Usual are: UTF-8, "
              + Encodings.offered().stream().map(Charset::name).collect(Collectors.joining(", "))
              + ".");
    }
  }
}
