package org.comparanda.exchange.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;

/**
 * The separator that cuts the header row into most columns; text in quotes doesn't count. Where
 * that row has none, it is the title of a table whose header stands below, or a table of one
 * column: the first of the next rows that has one tells.
 */
final class HeaderSeparator {
  private static final int ROWS = 10;

  private HeaderSeparator() {}

  static Separator of(BufferedReader text, long headerRow) throws IOException {
    long row = 1;
    while (row < headerRow + ROWS) {
      Map<Separator, Integer> counts = new EnumMap<>(Separator.class);
      boolean more = counted(text, counts);
      if (row >= headerRow && (!counts.isEmpty() || !more)) {
        return most(counts);
      }
      row++;
    }
    return Separator.COMMA;
  }

  /** Counts up to the end of a row; false at the end of the text. */
  private static boolean counted(BufferedReader text, Map<Separator, Integer> counts)
      throws IOException {
    boolean quoted = false;
    for (int c = text.read(); c >= 0; c = text.read()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == '\n' || c == '\r')) {
        if (c == '\r') {
          passOver(text, '\n');
        }
        return true;
      } else if (!quoted) {
        for (Separator separator : Separator.values()) {
          if (separator.sign() == c) {
            counts.merge(separator, 1, Integer::sum);
          }
        }
      }
    }
    return false;
  }

  private static void passOver(BufferedReader text, char next) throws IOException {
    text.mark(1);
    if (text.read() != next) {
      text.reset();
    }
  }

  private static Separator most(Map<Separator, Integer> counts) {
    Separator most = Separator.COMMA;
    for (Separator separator : Separator.values()) {
      if (counts.getOrDefault(separator, 0) > counts.getOrDefault(most, 0)) {
        most = separator;
      }
    }
    return most;
  }
}
