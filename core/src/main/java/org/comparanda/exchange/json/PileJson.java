package org.comparanda.exchange.json;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import org.comparanda.pile.Interest;
import org.comparanda.pile.PileEntry;

/** Writes the pile in its order. Errors: {@link IOException} if it can't be written. */
public final class PileJson {
  private PileJson() {}

  public static void entries(Writer writer, List<PileEntry> entries) throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.array();
      for (PileEntry e : entries) {
        json.object()
            .count("place", e.place())
            .text("number", e.arrival().number())
            .text("taxon", e.arrival().taxon())
            .text("what", e.arrival().what())
            .text("cameIn", e.arrival().cameIn())
            .text("from", e.arrival().from())
            .text("stage", e.arrival().stage().name().toLowerCase(Locale.ROOT))
            .text("lies", e.arrival().place())
            .text("permit", e.arrival().permit())
            .text("remarks", e.arrival().remarks())
            .array("interest");
        for (Interest interest : e.interest()) {
          json.object()
              .text("by", interest.by().value())
              .text("reason", interest.reason())
              .text("at", interest.at())
              .endObject();
        }
        json.endArray();
        if (e.wanted().isPresent()) {
          json.number("gain", e.wanted().get().gain()).text("element", e.wanted().get().element());
        } else {
          json.nothing("gain").nothing("element");
        }
        json.text("why", e.why()).endObject();
      }
      json.endArray();
    }
  }
}
