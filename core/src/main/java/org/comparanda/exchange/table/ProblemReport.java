package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.List;

/**
 * Everything that is wrong with one file. Nothing of such a file is used.
 *
 * @param file name of the file
 * @param problems in the order of the file, at most {@link #LISTED}
 * @param count how many there are, listed or not
 */
public record ProblemReport(String file, List<TableProblem> problems, long count) {
  /** So many are listed; a file with more has one fault many times over. */
  public static final int LISTED = 10_000;

  public ProblemReport {
    problems = List.copyOf(problems);
  }

  /** The report line by line: how many, what became of the file, then each problem. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        file
            + " was not read: "
            + (count == 1 ? "1 problem" : count + " problems")
            + ". Nothing of this file was stored.");
    problems.forEach(p -> lines.add(p.sentence()));
    if (count > problems.size()) {
      lines.add("And " + (count - problems.size()) + " more; correct these first.");
    }
    return lines;
  }
}
