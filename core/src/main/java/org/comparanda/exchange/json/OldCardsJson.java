package org.comparanda.exchange.json;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.oldcards.CardOnFile;
import org.comparanda.oldcards.CardParser;
import org.comparanda.oldcards.Piece;
import org.comparanda.oldcards.Proposal;
import org.comparanda.oldcards.WrittenLength;

/** Writes old cards with what each seems to say. Errors: {@link IOException}. */
public final class OldCardsJson {
  private OldCardsJson() {}

  public static void cards(Writer writer, List<CardOnFile> cards, CardParser parser)
      throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.array();
      for (CardOnFile each : cards) {
        card(json, each, parser.read(each.card().text()));
      }
      json.endArray();
    }
  }

  private static void card(JsonText json, CardOnFile each, Proposal said) throws IOException {
    json.object()
        .count("card", each.card().number())
        .text("source", each.card().source())
        .count("row", each.card().row())
        .text("text", each.card().text())
        .text("state", each.latest().map(d -> word(d.kind())).orElse("waiting"))
        .optionalText("decidedBy", each.latest().map(d -> d.person().value()))
        .optionalText("note", each.latest().map(d -> d.note()))
        .optionalText("taxon", said.taxon())
        .text("qualifier", said.qualifier().sign())
        .optionalText("element", said.element())
        .text("side", word(said.side()))
        .text("portion", word(said.portion()))
        .names("flags", said.flags().stream().map(OldCardsJson::word).sorted().toList())
        .count("count", said.count());
    json.object("lengths");
    for (Map.Entry<MeasurementCode, WrittenLength> length : said.lengths().entrySet()) {
      json.object(length.getKey().value())
          .text("written", length.getValue().asWritten())
          .number("mm", length.getValue().length().mm())
          .endObject();
    }
    json.endObject().text("place", said.place()).array("pieces");
    for (Piece piece : said.pieces()) {
      json.object()
          .count("from", piece.from())
          .count("to", piece.to())
          .text("part", word(piece.part()))
          .text("meaning", piece.meaning())
          .endObject();
    }
    json.endArray()
        .names("leftOver", said.leftOver())
        .names("taken", said.taken())
        .names("doubts", said.doubts())
        .text("shape", said.shape())
        .yesOrNo("plain", said.plain())
        .endObject();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
