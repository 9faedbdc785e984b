package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects the problems of one file while it is read. */
final class ProblemList {
  private final String file;
  private final List<TableProblem> listed = new ArrayList<>();
  private long count;

  ProblemList(String file) {
    this.file = file;
  }

  void add(TableProblem problem) {
    count++;
    if (listed.size() < ProblemReport.LISTED) {
      listed.add(problem);
    }
  }

  void file(String message, String remedy) {
    add(TableProblem.ofFile(file, message, remedy));
  }

  void row(long row, String message, String remedy) {
    add(
        new TableProblem(
            file, Optional.of(row), Optional.empty(), Optional.empty(), message, remedy));
  }

  void column(long row, String column, String message, String remedy) {
    add(
        new TableProblem(
            file, Optional.of(row), Optional.of(column), Optional.empty(), message, remedy));
  }

  void cell(long row, String column, String value, String message, String remedy) {
    add(
        new TableProblem(
            file, Optional.of(row), Optional.of(column), Optional.of(value), message, remedy));
  }

  boolean isEmpty() {
    return count == 0;
  }

  ProblemReport report() {
    return new ProblemReport(file, listed, count);
  }
}
