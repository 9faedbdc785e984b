package org.comparanda.exchange.table;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the cells that should hold numbers; what is wrong with one is a problem with its place. */
final class NumberCells {
  private final DecimalMark decimal;
  private long numbersAsText;
  private String firstAsText = "";

  NumberCells(DecimalMark decimal) {
    this.decimal = decimal;
  }

  /** The number of a measured cell; empty and a problem where it holds none. */
  OptionalDouble read(long row, TableColumn column, List<Cell> cells, ProblemList problems) {
    Cell cell = cells.get(column.index());
    return switch (cell.kind()) {
      case NUMBER -> NumberText.read(cell.text(), DecimalMark.POINT);
      case TEXT -> typedNumber(row, column, cell.text(), problems);
      case DATE -> {
        problems.cell(
            row,
            column.header(),
            cell.text(),
            "a date, where a number is expected",
            "Spreadsheets turn 12.3 or 3-12 into a date by themselves: type the number again in a"
                + " cell of the format Number or Text.");
        yield OptionalDouble.empty();
      }
      case FAULT -> {
        fault(row, column, cell, problems);
        yield OptionalDouble.empty();
      }
    };
  }

  private OptionalDouble typedNumber(
      long row, TableColumn column, String text, ProblemList problems) {
    OptionalDouble value = NumberText.read(text, decimal);
    if (value.isEmpty()) {
      problems.cell(
          row,
          column.header(),
          text,
          "not a number",
          "Correct the cell, or leave it empty if it was not measured. (The decimal mark of this"
              + " file is the "
              + decimal.word()
              + ".)");
    } else if (numbersAsText++ == 0) {
      firstAsText = "row " + row + ", column " + column.header();
    }
    return value;
  }

  static void fault(long row, TableColumn column, Cell cell, ProblemList problems) {
    problems.cell(
        row,
        column.header(),
        cell.text(),
        "the cell holds no value that can be read",
        "Correct the formula or the entry, or empty the cell.");
  }

  /** Numbers that stood in cells of text, for a spreadsheet; the first of them is named. */
  Optional<String> readFromText() {
    if (numbersAsText == 0) {
      return Optional.empty();
    }
    return Optional.of(
        numbersAsText == 1
            ? "One number was stored as text (" + firstAsText + ") and was read as a number."
            : numbersAsText
                + " numbers were stored as text (the first: "
                + firstAsText
                + ") and were read as numbers.");
  }

  static void notAboveZero(long row, TableColumn column, List<Cell> cells, ProblemList problems) {
    problems.cell(
        row,
        column.header(),
        cells.get(column.index()).text(),
        "a measurement is above zero",
        "Correct the cell, or leave it empty if it was not measured.");
  }
}
