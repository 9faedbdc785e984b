package org.comparanda.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/**
 * What came of one command.
 *
 * @param code exit code
 * @param out what was printed as answer
 * @param err what was printed beside it
 */
record Typed(int code, String out, String err) {
  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

  /** Runs the command as the program's own entry does. */
  static Typed command(Object... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] line = new String[words.length];
    for (int i = 0; i < words.length; i++) {
      line[i] = words[i].toString();
    }
    int code =
        Comparanda.run(new Terminal(new PrintWriter(out), new PrintWriter(err), CLOCK), line);
    return new Typed(code, out.toString(), err.toString());
  }
}
