package org.comparanda.exchange.json;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.comparanda.check.Judgement;
import org.comparanda.stock.HardPair;
import org.comparanda.stock.Stock;
import org.comparanda.stock.Wanted;

/** Writes what the keeper asks of the shelf. Errors: {@link IOException} if it can't be written. */
public final class ShelfJson {
  private ShelfJson() {}

  /** Findings, the accepted ones marked with their reason. */
  public static void findings(Writer writer, List<Judgement> findings) throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.array();
      for (Judgement each : findings) {
        var f = each.finding();
        json.object()
            .text("kind", f.kind())
            .optionalText("animal", f.animal())
            .optionalText("bone", f.bone())
            .optionalText("column", f.column())
            .optionalText("value", f.value())
            .text("message", f.message())
            .text("remedy", f.remedy())
            .yesOrNo("accepted", each.accepted().isPresent())
            .optionalText("reason", each.accepted().map(a -> a.reason()))
            .endObject();
      }
      json.endArray();
    }
  }

  /** Animals by taxon and element. */
  public static void stock(Writer writer, Stock stock) throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.array();
      for (Stock.Cell cell : stock.cells()) {
        json.object()
            .text("taxon", cell.taxon())
            .text("element", cell.element())
            .count("animals", cell.animals())
            .endObject();
      }
      json.endArray();
    }
  }

  /** The wanted list, largest gain first. */
  public static void wanted(Writer writer, List<Wanted.Entry> wanted) throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.array();
      for (Wanted.Entry entry : wanted) {
        json.object()
            .text("taxon", entry.taxon())
            .text("element", entry.element())
            .number("gain", entry.gain())
            .text("reason", entry.reason())
            .endObject();
      }
      json.endArray();
    }
  }

  /** Pairs that an element doesn't tell apart, the worst first. */
  public static void pairs(Writer writer, List<HardPair> pairs) throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.array();
      for (HardPair pair : pairs) {
        json.object()
            .names("taxa", List.of(pair.one(), pair.other()))
            .text("element", pair.element())
            .count("mixedUp", pair.mixedUp().hits())
            .count("animals", pair.mixedUp().tries())
            .optionalText("better", pair.better().map(HardPair.Better::element))
            .text("sentence", pair.sentence())
            .endObject();
      }
      json.endArray();
    }
  }
}
