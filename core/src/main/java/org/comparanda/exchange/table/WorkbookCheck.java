package org.comparanda.exchange.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Whether a packed workbook may be unpacked at all: looks once through every part, keeping nothing,
 * before anything of it is read. What a spreadsheet writes stays far below these bounds.
 */
final class WorkbookCheck {
  private static final long MOST_BYTES = 2L << 30;
  private static final long MOST_KEPT_BYTES = 128L << 20; // shared texts and styles are kept whole
  private static final long LONGEST_RUN = 1L << 20; // one cell holds 32,767 characters at most
  private static final int MOST_PARTS = 10_000;
  private static final int OVERLAP = 64;
  private static final Pattern NOTABLE =
      Pattern.compile("<(row|x:row)[ >]|<mergeCell |<!DOCTYPE|<!ENTITY| r=\"[A-Za-z]{4}");

  private final Path path;

  /**
   * What a look through the parts found.
   *
   * @param rows in all sheets together
   * @param merged ranges of cells made one
   */
  record Seen(long rows, long merged) {}

  WorkbookCheck(Path path) {
    this.path = path;
  }

  Seen look(ReadingProgress progress, ProblemList problems) {
    Totals totals = new Totals();
    try (ZipFile zip = new ZipFile(path.toFile())) {
      if (zip.getEntry("xl/workbook.xml") == null && zip.getEntry("[Content_Types].xml") == null) {
        problems.file(
            "the file is no .xlsx workbook",
            "Save the table as .xlsx or as CSV (UTF-8) from the program that made it.");
        return new Seen(0, 0);
      }
      if (zip.size() > MOST_PARTS) {
        tooLarge(problems, "it has " + zip.size() + " parts");
        return new Seen(0, 0);
      }
      Enumeration<? extends ZipEntry> parts = zip.entries();
      while (parts.hasMoreElements() && problems.isEmpty()) {
        ZipEntry part = parts.nextElement();
        RowSource.goOnOrStop(progress, path);
        if (part.getName().endsWith(".xml") || part.getName().endsWith(".rels")) {
          try (InputStream in = zip.getInputStream(part)) {
            part(part.getName(), in, totals, progress, problems);
          }
        }
      }
    } catch (IOException | IllegalArgumentException broken) {
      problems.file(
          "the spreadsheet is damaged (" + broken.getMessage() + ")",
          "Copy the file again from where it came, or save it again in the program that made it.");
    }
    return new Seen(totals.rows, totals.merged);
  }

  /** Sums over all parts. */
  private static final class Totals {
    private long bytes;
    private long rows;
    private long merged;
  }

  private void part(
      String name, InputStream in, Totals totals, ReadingProgress progress, ProblemList problems)
      throws IOException {
    boolean kept = !name.startsWith("xl/worksheets/");
    byte[] block = new byte[1 << 16];
    String before = "";
    long bytes = 0;
    long run = 0;
    for (int n = in.read(block); n > 0 && problems.isEmpty(); n = in.read(block)) {
      RowSource.goOnOrStop(progress, path);
      bytes += n;
      totals.bytes += n;
      String text = new String(block, 0, n, StandardCharsets.ISO_8859_1);
      run = longestRun(text, run, problems);
      notable(before + text, before.length(), totals, problems);
      before = text.substring(Math.max(0, text.length() - OVERLAP));
      if (totals.bytes > MOST_BYTES || (kept && bytes > MOST_KEPT_BYTES)) {
        tooLarge(problems, "unpacked it is larger than " + (totals.bytes >> 20) + " MB");
      }
    }
  }

  /** Text without a tag is what the reader must keep at once. */
  private long longestRun(String text, long before, ProblemList problems) {
    long run = before;
    int from = 0;
    for (int tag = text.indexOf('<'); tag >= 0; tag = text.indexOf('<', from)) {
      run = 0;
      from = tag + 1;
    }
    run += text.length() - from;
    if (run > LONGEST_RUN) {
      tooLarge(problems, "one cell holds more than a spreadsheet allows");
    }
    return run;
  }

  private static void notable(String text, int known, Totals totals, ProblemList problems) {
    Matcher found = NOTABLE.matcher(text);
    while (found.find()) {
      if (found.end() <= known) {
        continue; // counted with the block before
      }
      if (found.group().startsWith("<!") || found.group().startsWith(" r=")) {
        problems.file(
            "the spreadsheet holds what no spreadsheet program writes (\""
                + found.group().strip()
                + "\")",
            "Open it in a spreadsheet program, save it again, and import that file.");
        return;
      }
      totals.rows += found.group().contains("row") ? 1 : 0;
      totals.merged += found.group().startsWith("<mergeCell") ? 1 : 0;
    }
  }

  private static void tooLarge(ProblemList problems, String why) {
    problems.file(
        "the spreadsheet is too large to be opened safely: " + why,
        "Save the sheet that is meant as CSV (UTF-8) and import that.");
  }
}
