package org.comparanda.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.comparanda.oldcards.CardOnFile;
import org.comparanda.oldcards.CardParser;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The shapes of the waiting cards, the commonest first. */
@Command(
    name = "shapes",
    description = {
      "List the shapes of the waiting cards, the commonest first: how many cards have it, how many of",
      "them are plain, and the first of them."
    },
    mixinStandardHelpOptions = true)
final class CardsShapes implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  CardsShapes(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Map<String, List<CardOnFile>> byShape = new LinkedHashMap<>();
    try (Collection opened = collection.open(terminal)) {
      CardParser parser = CardText.parser(opened);
      opened.oldCards().all().stream()
          .filter(c -> c.latest().isEmpty())
          .forEach(
              c ->
                  byShape
                      .computeIfAbsent(parser.read(c.card().text()).shape(), s -> new ArrayList<>())
                      .add(c));
      byShape.entrySet().stream()
          .sorted(
              Comparator.comparingInt(
                  (Map.Entry<String, List<CardOnFile>> e) -> -e.getValue().size()))
          .forEach(
              e -> {
                long plain =
                    e.getValue().stream().filter(c -> parser.read(c.card().text()).plain()).count();
                terminal.say(
                    Count.of(e.getValue().size(), "card")
                        + ", "
                        + plain
                        + " plain: "
                        + e.getKey()
                        + "   e.g. card "
                        + e.getValue().get(0).card().number()
                        + ": "
                        + e.getValue().get(0).card().text());
              });
    }
    return Terminal.FINE;
  }
}
