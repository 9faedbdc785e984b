package org.comparanda.exchange.json;

import java.io.IOException;
import java.io.Writer;
import java.util.List;

/** Kept answers beside today's, as JSON. */
public final class KeptCheckJson {
  private KeptCheckJson() {}

  /** Writes the whole text. Errors: {@link IOException} if it can't be written. */
  public static void write(Writer writer, ProgramVersion program, List<KeptAgain.Checked> checked)
      throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.object()
          .text("program", program.program())
          .text("version", program.version())
          .array("answers");
      for (KeptAgain.Checked one : checked) {
        json.object()
            .count("id", one.answer().id())
            .text("bone", one.answer().bone())
            .text("at", one.answer().at())
            .optionalText("call", one.answer().call())
            .text("program", one.answer().program())
            .text("shelfVersion", one.answer().shelfVersion())
            .yesOrNo("same", one.same())
            .names("circumstances", one.circumstances())
            .names("changes", one.changes())
            .endObject();
      }
      json.endArray().endObject();
    }
  }
}
