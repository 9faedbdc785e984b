package org.comparanda.slips;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** All keys of the bench on one page, to hang up beside it. */
public final class KeyCard {
  private final SlipFacts facts;

  public KeyCard(SlipFacts facts) {
    this.facts = facts;
  }

  /** One key and what it does. */
  public record Line(String key, String does) {}

  /** Writes the page and gives the number of pages. Errors: {@link IOException}. */
  public int write(OutputStream out, String title, List<Line> lines) throws IOException {
    try (Sheet sheet = new Sheet(facts)) {
      sheet.text(sheet.left(), sheet.top() + 8, 18, Letters.BOLD, Ink.BLACK, title);
      float y = sheet.top() + 20;
      for (Line line : lines) {
        if (y > sheet.bottom()) {
          sheet.nextPage();
          y = sheet.top() + 8;
        }
        sheet.fitted(sheet.left(), y, 48, 13, Letters.BOLD, Ink.BLACK, line.key());
        sheet.fitted(
            sheet.left() + 52, y, sheet.width() - 52, 13, Letters.PLAIN, Ink.BLACK, line.does());
        y += 9;
      }
      sheet.write(out);
      return sheet.pages();
    }
  }
}
