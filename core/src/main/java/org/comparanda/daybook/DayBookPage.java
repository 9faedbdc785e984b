package org.comparanda.daybook;

import java.util.List;

/**
 * Some entries of a Day Book.
 *
 * @param lines the newest first
 * @param all how many there are that were asked for
 */
public record DayBookPage(List<Line> lines, long all) {
  public DayBookPage {
    lines = List.copyOf(lines);
  }

  /**
   * One entry.
   *
   * @param by id of the person: of the entry, or of the row that it is on; empty where neither says
   * @param words what was done, for people to read: as its row says, else the entry; may be empty
   */
  public record Line(DayBookEntry entry, String by, String words) {}
}
