package org.comparanda.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.comparanda.exchange.json.OldCardsJson;
import org.comparanda.oldcards.CardOnFile;
import org.comparanda.oldcards.CardParser;
import org.comparanda.storage.Collection;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists old cards with what each seems to say. */
@Command(
    name = "list",
    description = "List cards as found, with what each seems to say and what was left over.",
    mixinStandardHelpOptions = true)
final class CardsList implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(
      names = "--state",
      paramLabel = "STATE",
      description = "waiting (if not said), accepted, refused or all.")
  private State state = State.WAITING;

  @Option(names = "--shape", paramLabel = "TEXT", description = "Only those of this shape.")
  private @Nullable String shape;

  @Mixin private JsonArgument json = new JsonArgument();

  /** Which cards. */
  private enum State {
    WAITING,
    ACCEPTED,
    REFUSED,
    ALL
  }

  CardsList(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    try (Collection opened = collection.open(terminal)) {
      CardParser parser = CardText.parser(opened);
      List<CardOnFile> cards =
          opened.oldCards().all().stream()
              .filter(this::wanted)
              .filter(c -> shape == null || parser.read(c.card().text()).shape().equals(shape))
              .toList();
      Optional<java.nio.file.Path> out = json.file();
      if (out.isPresent()) {
        JsonArgument.write(out.get(), writer -> OldCardsJson.cards(writer, cards, parser));
      } else {
        cards.forEach(c -> CardText.lines(c, parser).forEach(terminal::say));
      }
      terminal.note(Count.of(cards.size(), "card") + ".");
    }
    return Terminal.FINE;
  }

  private boolean wanted(CardOnFile card) {
    String is = card.latest().map(d -> d.kind().name()).orElse(State.WAITING.name());
    return state == State.ALL || state.name().equals(is);
  }
}
