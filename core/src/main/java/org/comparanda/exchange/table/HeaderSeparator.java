package org.comparanda.exchange.table;

import java.io.IOException;
import java.io.Reader;
import java.util.EnumMap;
import java.util.Map;

/** The separator that cuts the header row into most columns; text in quotes doesn't count. */
final class HeaderSeparator {
  private HeaderSeparator() {}

  static Separator of(Reader text) throws IOException {
    Map<Separator, Integer> counts = new EnumMap<>(Separator.class);
    boolean quoted = false;
    for (int c = text.read(); c >= 0; c = text.read()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == '\n' || c == '\r')) {
        break;
      } else if (!quoted) {
        for (Separator separator : Separator.values()) {
          if (separator.sign() == c) {
            counts.merge(separator, 1, Integer::sum);
          }
        }
      }
    }
    Separator most = Separator.COMMA;
    for (Separator separator : Separator.values()) {
      if (counts.getOrDefault(separator, 0) > counts.getOrDefault(most, 0)) {
        most = separator;
      }
    }
    return most;
  }
}
