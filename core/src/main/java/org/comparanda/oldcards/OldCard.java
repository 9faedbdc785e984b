package org.comparanda.oldcards;

/**
 * One line of a legacy list, its text exactly as found.
 *
 * @param number running number in its collection, given by the repository
 * @param source the list that it stood in
 * @param row its row there, from 1
 * @param text as found
 */
public record OldCard(long number, String source, long row, String text) {
  /** The same card under the number that its repository gave it. */
  public OldCard withNumber(long given) {
    return new OldCard(given, source, row, text);
  }
}
