package org.comparanda.slips;

import java.io.IOException;
import java.util.Collections;
import java.util.List;

/** A table that goes on over pages, its head on each. */
final class Table {
  private static final float ROW_MM = 5;
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

  /** A row with a sentence below it, which goes on over as many lines as it needs. */
  void row(List<String> cells, String note) throws IOException {
    List<String> lines =
        note.isEmpty()
            ? List.of()
            : sheet.lines(sheet.width() - INDENT_MM, NOTE_POINTS, Letters.PLAIN, note);
    float height = ROW_MM + lines.size() * NOTE_LINE_MM;
    if (y < 0) {
      y = sheet.top() + 4;
      head();
    } else if (y + height > sheet.bottom()) {
      sheet.nextPage();
      y = sheet.top() + 4;
      head();
    }
    cells(cells, Letters.PLAIN);
    for (int i = 0; i < lines.size(); i++) {
      sheet.text(
          sheet.left() + INDENT_MM,
          y + (i + 1) * NOTE_LINE_MM + 0.3f,
          NOTE_POINTS,
          Letters.PLAIN,
          Ink.GREY,
          lines.get(i));
    }
    y += lines.size() * NOTE_LINE_MM;
    sheet.line(
        sheet.left(), y - 1.6f + ROW_MM - 2, sheet.right(), y - 1.6f + ROW_MM - 2, 0.1f, Ink.STRIP);
    y += ROW_MM;
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
