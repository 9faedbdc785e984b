package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.measurement.LengthUnit;

/** Collects the problems of one file while it is read. */
final class ProblemList {
  private final String file;
  private final List<TableProblem> listed = new ArrayList<>();
  private final Map<String, String> letters = new HashMap<>();
  private long count;

  ProblemList(String file) {
    this.file = file;
  }

  void add(TableProblem problem) {
    count++;
    if (listed.size() < ProblemReport.LISTED) {
      listed.add(problem.row().isEmpty() ? problem : problem.in(cellOf(problem)));
    }
  }

  /** From now on problems name the cell too: the letters of each column of a spreadsheet. */
  void letters(Map<String, String> ofHeaders) {
    letters.putAll(ofHeaders);
  }

  private Optional<String> cellOf(TableProblem problem) {
    return problem.column().map(letters::get).map(l -> l + problem.row().orElseThrow());
  }

  void file(String message, String remedy) {
    add(TableProblem.ofFile(file, message, remedy));
  }

  void row(long row, String message, String remedy) {
    add(
        new TableProblem(
            file,
            Optional.of(row),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            message,
            remedy,
            Optional.empty()));
  }

  void column(long row, String column, String message, String remedy) {
    add(
        new TableProblem(
            file,
            Optional.of(row),
            Optional.of(column),
            Optional.empty(),
            Optional.empty(),
            message,
            remedy,
            Optional.empty()));
  }

  void doubtfulUnit(
      long headerRow, TableColumn column, LengthUnit looksLike, String message, String remedy) {
    add(
        new TableProblem(
            file,
            Optional.of(headerRow),
            Optional.of(column.header()),
            Optional.empty(),
            Optional.empty(),
            message,
            remedy,
            Optional.of(new TableProblem.Answer.SayUnit(column.code().orElseThrow(), looksLike))));
  }

  void askForSheet(String message, String remedy, List<String> sheets) {
    add(
        new TableProblem(
            file,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            message,
            remedy,
            sheets.isEmpty()
                ? Optional.empty()
                : Optional.of(new TableProblem.Answer.SaySheet(sheets))));
  }

  /** A name that is not known, in a cell or a header, and that the table may bring. */
  void unknownName(long row, String column, Optional<String> value, String message, String remedy) {
    add(
        new TableProblem(
            file,
            Optional.of(row),
            Optional.of(column),
            Optional.empty(),
            value,
            message,
            remedy,
            Optional.of(new TableProblem.Answer.Register())));
  }

  void cell(long row, String column, String value, String message, String remedy) {
    add(
        new TableProblem(
            file,
            Optional.of(row),
            Optional.of(column),
            Optional.empty(),
            Optional.of(value),
            message,
            remedy,
            Optional.empty()));
  }

  boolean isEmpty() {
    return count == 0;
  }

  ProblemReport report() {
    return new ProblemReport(file, listed, count);
  }
}
