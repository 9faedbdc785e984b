package org.comparanda.exchange.table;

import java.io.IOException;
import java.io.Reader;
import java.util.OptionalLong;

/** Finds a quote that is opened at the start of a cell and never closed (RFC 4180). */
final class QuoteBalance {
  private QuoteBalance() {}

  /** The line on which the open quote stands, counted from 1. */
  static OptionalLong lineOfUnclosed(Reader text, Separator separator) throws IOException {
    long line = 1;
    long openedOn = 0;
    boolean cellStarts = true;
    boolean quoted = false;
    for (int c = text.read(); c >= 0; c = text.read()) {
      if (c == '"' && quoted) {
        quoted = false; // a doubled quote opens it again with the next character
        cellStarts = true;
      } else if (c == '"' && cellStarts) {
        quoted = true;
        openedOn = line;
      } else if (!quoted) {
        cellStarts = c == separator.sign() || c == '\n' || c == '\r';
      }
      if (c == '\n') {
        line++;
      }
    }
    return quoted ? OptionalLong.of(openedOn) : OptionalLong.empty();
  }
}
