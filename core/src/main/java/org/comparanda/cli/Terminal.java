package org.comparanda.cli;

import java.io.PrintWriter;
import java.time.Clock;

/** Where answers go, where messages go, and what time it is. */
record Terminal(PrintWriter out, PrintWriter err, Clock clock) {
  static final int FINE = 0;
  static final int PROBLEMS_FOUND = 1;
  static final int NOT_DONE = 2;

  /** One line of an answer. */
  void say(String line) {
    out.println(line);
  }

  /** One line beside the answer: progress, facts, problems. */
  void note(String line) {
    err.println(line);
    err.flush();
  }
}
