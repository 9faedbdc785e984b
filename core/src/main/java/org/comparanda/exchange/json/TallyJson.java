package org.comparanda.exchange.json;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.comparanda.statistics.Outcome;
import org.comparanda.tally.ElementTally;
import org.comparanda.tally.PlaceTally;
import org.comparanda.tally.TaxonTally;

/** Writes tallies, or why there are none. */
public final class TallyJson {
  private TallyJson() {}

  /** All places. Errors: {@link IOException} if it can't be written. */
  public static void write(Writer writer, List<PlaceTally> places) throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.object().array("places");
      for (PlaceTally place : places) {
        json.object().text("place", place.place()).array("taxa");
        for (TaxonTally taxon : place.taxa()) {
          write(json, taxon);
        }
        json.endArray().endObject();
      }
      json.endArray().endObject();
    }
  }

  /** A refusal with its reason. Errors: {@link IOException} if it can't be written. */
  public static void refused(Writer writer, String why) throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.object().text("refused", why).endObject();
    }
  }

  private static void write(JsonText json, TaxonTally taxon) throws IOException {
    json.object()
        .text("taxon", taxon.taxon())
        .count("nisp", taxon.nisp())
        .count("mni", taxon.mni())
        .array("elements");
    for (ElementTally element : taxon.elements()) {
      Outcome<Double> mau = element.mau();
      json.object()
          .text("element", element.element())
          .count("nisp", element.nisp())
          .count("mne", element.mne())
          .number("mau", mau)
          .number("percentMau", taxon.percentMau(element))
          .endObject();
    }
    json.endArray().names("steps", taxon.steps()).endObject();
  }
}
