package org.comparanda.slips;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A table that goes on over pages, its head on each. */
final class Table {
  private static final float ROW_MM = 5;
  private static final float LINE_MM = 3.6f;
  private static final float HEAD_MM = 20;
  private static final float POINTS = 8;
  private static final float INDENT_MM = 6;
  private static final float NOTE_POINTS = 7;
  private static final float NOTE_LINE_MM = 3.4f;

  private final Sheet sheet;
  private final String title;
  private final List<String> head;
  private List<Float> widths;
  private float y = -1;

  Table(Sheet sheet, String title, List<String> head) {
    this.sheet = sheet;
    this.title = title;
    this.head = head;
    widths = Collections.nCopies(head.size(), 1f / head.size());
  }

  /** Parts of the page's width, one a column. */
  Table withWidths(List<Float> parts) {
    widths = parts;
    return this;
  }

  /** The table begins below this instead of on top of the page. */
  Table below(float start) throws IOException {
    y = start;
    head();
    return this;
  }

  void row(List<String> cells) throws IOException {
    row(cells, "");
  }

  /** A row with a sentence below it; both go on over as many lines, and pages, as they need. */
  void row(List<String> cells, String note) throws IOException {
    List<List<String>> broken = broken(cells);
    int most = broken.stream().mapToInt(List::size).max().orElse(1);
    List<String> lines =
        note.isEmpty()
            ? List.of()
            : sheet.lines(sheet.width() - INDENT_MM, NOTE_POINTS, Letters.PLAIN, note);
    float height = ROW_MM + (most - 1) * LINE_MM + lines.size() * NOTE_LINE_MM;
    boolean fitsOnAPage = height < sheet.bottom() - sheet.top() - HEAD_MM;
    if (y < 0) {
      y = sheet.top() + 4;
      head();
    } else if (y + (fitsOnAPage ? height : ROW_MM) > sheet.bottom()) {
      nextPage();
    }
    for (int i = 0; i < most; i++) {
      if (i > 0) {
        goDown(LINE_MM);
      }
      int here = i;
      cells(
          broken.stream().map(cell -> here < cell.size() ? cell.get(here) : "").toList(),
          Letters.PLAIN);
    }
    for (String line : lines) {
      goDown(NOTE_LINE_MM);
      sheet.text(sheet.left() + INDENT_MM, y + 0.3f, NOTE_POINTS, Letters.PLAIN, Ink.GREY, line);
    }
    sheet.line(
        sheet.left(), y - 1.6f + ROW_MM - 2, sheet.right(), y - 1.6f + ROW_MM - 2, 0.1f, Ink.STRIP);
    y += ROW_MM;
  }

  private List<List<String>> broken(List<String> cells) throws IOException {
    List<List<String>> broken = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      float width = widths.get(i) * sheet.width() - 2;
      broken.add(sheet.lines(width, POINTS, Letters.PLAIN, cells.get(i)));
    }
    return broken;
  }

  /** One line down, on the next page where this one is full. */
  private void goDown(float step) throws IOException {
    y += step;
    if (y > sheet.bottom()) {
      nextPage();
    }
  }

  private void nextPage() throws IOException {
    sheet.nextPage();
    y = sheet.top() + 4;
    head();
  }

  /** Where the next thing may stand. */
  float end() {
    return y < 0 ? sheet.top() : y;
  }

  private void head() throws IOException {
    if (!title.isEmpty()) {
      sheet.text(sheet.left(), y, 12, Letters.BOLD, Ink.BLACK, title);
      y += 7;
    }
    cells(head, Letters.BOLD);
    sheet.line(sheet.left(), y + 1.4f, sheet.right(), y + 1.4f, 0.3f, Ink.BLACK);
    y += ROW_MM + 0.6f;
  }

  private void cells(List<String> cells, Letters letters) throws IOException {
    float x = sheet.left();
    for (int i = 0; i < cells.size(); i++) {
      float width = widths.get(i) * sheet.width();
      sheet.fitted(x, y, width - 2, POINTS, letters, Ink.BLACK, cells.get(i));
      x += width;
    }
  }
}
