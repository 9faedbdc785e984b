package org.comparanda.exchange.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;

/** A workbook of a spreadsheet (Office Open XML, .xlsx): which sheets it has and which is read. */
final class SpreadsheetFile {
  private static final byte[] ZIP = {'P', 'K', 3, 4};
  private static final byte[] COMPOUND = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

  private final Path path;

  SpreadsheetFile(Path path) {
    this.path = path;
  }

  /** Whether it begins as a workbook does, whatever its name. */
  static boolean is(Path path) throws IOException {
    byte[] start = start(path);
    return Arrays.equals(start, ZIP) || Arrays.equals(start, COMPOUND);
  }

  private static byte[] start(Path path) throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      return in.readNBytes(ZIP.length);
    }
  }

  /** The rows of the named sheet, or of the only one that holds something. */
  Optional<RowSource> rows(
      Optional<String> wanted, long headerRow, ReadingProgress progress, ProblemList problems)
      throws IOException {
    if (Arrays.equals(start(path), COMPOUND)) {
      problems.file(
          "the file is a spreadsheet of the old form (.xls) or locked by a password",
          "Save it from the spreadsheet as .xlsx without a password, or as CSV (UTF-8).");
      return Optional.empty();
    }
    WorkbookCheck.Seen seen = new WorkbookCheck(path).look(progress, problems);
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    try (ReadableWorkbook book = SheetRows.open(path)) {
      List<Sheet> sheets = book.getSheets().toList();
      return chosen(sheets, wanted, problems)
          .map(sheet -> new SheetRows(path, sheet.getName(), seen, headerRow, progress));
    } catch (RuntimeException | IOException broken) {
      problems.file(
          "the spreadsheet is damaged (" + broken.getMessage() + ")",
          "Open it in the program that made it and save it again, or save it as CSV (UTF-8).");
      return Optional.empty();
    }
  }

  private Optional<Sheet> chosen(List<Sheet> sheets, Optional<String> wanted, ProblemList problems)
      throws IOException {
    List<String> names = sheets.stream().map(Sheet::getName).toList();
    if (wanted.isPresent()) {
      Optional<Sheet> found =
          sheets.stream().filter(s -> s.getName().equals(wanted.get())).findFirst();
      if (found.isEmpty()) {
        problems.file(
            "the file has no sheet \"" + wanted.get() + "\"",
            "Say --sheet with one of its sheets: " + String.join(", ", names) + ".");
      }
      return found;
    }
    List<Sheet> filled = new ArrayList<>();
    for (Sheet sheet : sheets) {
      if (sheet.getVisibility() == SheetVisibility.VISIBLE && holdsSomething(sheet)) {
        filled.add(sheet);
      }
    }
    if (filled.size() == 1) {
      return Optional.of(filled.get(0));
    }
    problems.askForSheet(
        filled.isEmpty()
            ? "the file has no sheet that holds anything"
            : "the file has several sheets: "
                + String.join(", ", filled.stream().map(Sheet::getName).toList()),
        filled.isEmpty() ? "Check that this is the right file." : "Say which one by --sheet NAME.",
        filled.stream().map(Sheet::getName).toList());
    return Optional.empty();
  }

  private static boolean holdsSomething(Sheet sheet) throws IOException {
    try (Stream<Row> rows = sheet.openStream()) {
      return rows.anyMatch(row -> !SheetRows.blank(row));
    }
  }
}
