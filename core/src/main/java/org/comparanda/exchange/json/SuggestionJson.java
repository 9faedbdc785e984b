package org.comparanda.exchange.json;

import java.io.IOException;
import java.io.Writer;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.suggestion.Suggestion;

/** Writes suggestions one after the other, so that a table of any length fits. */
public final class SuggestionJson implements AutoCloseable {
  private final JsonText json;

  /** Begins the text. Errors: {@link IOException} if it can't be written. */
  public SuggestionJson(
      Writer writer, ProgramVersion program, ShelfInUse shelf, ComparisonRules rules)
      throws IOException {
    json = new JsonText(writer);
    json.object().text("program", program.program()).text("version", program.version());
    json.object("shelf")
        .count("animals", shelf.animals())
        .count("taxa", shelf.taxa())
        .names("measurements", shelf.measurements())
        .text("priors", shelf.priors())
        .text("method", shelf.method())
        .endObject();
    RulesJson.write(json.name("rules"), rules);
    json.array("bones");
  }

  /** One bone more. */
  public void write(Suggestion s) throws IOException {
    OneSuggestionJson.write(json, s);
  }

  @Override
  public void close() throws IOException {
    json.endArray().endObject();
    json.close();
  }
}
