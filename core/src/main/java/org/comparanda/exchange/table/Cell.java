package org.comparanda.exchange.table;

import org.comparanda.exchange.csv.HarmlessCsv;

/**
 * One cell as its table holds it.
 *
 * @param text what stands in it, blanks around it stripped; a number with a decimal point, a date
 *     as ISO 8601
 * @param kind what the table says it is; in a text table everything is text
 */
record Cell(String text, Kind kind) {
  static final Cell EMPTY = new Cell("", Kind.TEXT);

  /** What a spreadsheet knows of its cells. */
  enum Kind {
    TEXT,
    NUMBER,
    DATE,
    FAULT
  }

  /** A cell of a text table; the apostrophe of a cell like a formula is taken away. */
  static Cell typed(String text) {
    return new Cell(HarmlessCsv.plain(text.strip()), Kind.TEXT);
  }

  /** Whether it says that there is no value. */
  boolean missing() {
    return kind == Kind.TEXT && NumberText.missing(text);
  }

  /** Its text; the empty one where there is no value. */
  String orEmpty() {
    return missing() ? "" : text;
  }
}
