package org.comparanda.daybook;

import java.util.List;

/**
 * One line of a joining entry: the last entry of a bench at that moment.
 *
 * @param number of that entry in its bench
 */
public record JoinedHead(long number, String hash, String bench) {
  static JoinedHead read(String line) {
    int afterNumber = line.indexOf(' ');
    int afterHash = line.indexOf(' ', afterNumber + 1);
    return new JoinedHead(
        Long.parseLong(line.substring(0, afterNumber)),
        line.substring(afterNumber + 1, afterHash),
        line.substring(afterHash + 1));
  }

  /** The heads that a joining entry lists. */
  public static List<JoinedHead> all(DayBookEntry joining) {
    return joining.content().lines().map(JoinedHead::read).toList();
  }
}
