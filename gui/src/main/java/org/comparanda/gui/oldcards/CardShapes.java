package org.comparanda.gui.oldcards;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.comparanda.oldcards.CardOnFile;
import org.comparanda.oldcards.CardParser;
import org.comparanda.oldcards.Proposal;

/**
 * Shapes of the cards' texts, each text read once: thousands are asked for with every card that is
 * opened. Texts never change.
 */
final class CardShapes {
  private final Supplier<CardParser> reading;
  private volatile Known known;

  private record Shape(String words, boolean plain) {}

  /** What one parser read: another, by other names, begins anew. */
  private record Known(CardParser parser, Map<String, Shape> shapes) {
    Shape of(String text) {
      return shapes.computeIfAbsent(
          text,
          t -> {
            Proposal read = parser.read(t);
            return new Shape(read.shape(), read.plain());
          });
    }
  }

  CardShapes(Supplier<CardParser> reading) {
    this.reading = reading;
    known = new Known(reading.get(), new ConcurrentHashMap<>());
  }

  /** Reads what was not read yet: not for the thread of a window. */
  void learn(List<CardOnFile> cards) {
    Known now = known();
    cards.stream().filter(c -> c.latest().isEmpty()).forEach(c -> now.of(c.card().text()));
  }

  /** The plain ones among the cards that wait with the shape of what was read. */
  Stream<CardOnFile> alike(List<CardOnFile> cards, Proposal said) {
    Known now = known();
    Shape same = new Shape(said.shape(), true);
    return cards.stream()
        .filter(c -> c.latest().isEmpty())
        .filter(c -> now.of(c.card().text()).equals(same));
  }

  private Known known() {
    CardParser parser = reading.get();
    if (!known.parser().equals(parser)) {
      known = new Known(parser, new ConcurrentHashMap<>());
    }
    return known;
  }
}
