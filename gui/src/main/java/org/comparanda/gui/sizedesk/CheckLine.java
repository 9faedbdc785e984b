package org.comparanda.gui.sizedesk;

/**
 * One thing that was looked at, and what was found.
 *
 * @param what was looked at
 * @param found in words and numbers
 * @param weight how much it should worry a reader
 */
public record CheckLine(String what, String found, Weight weight) {
  /** How much a finding should worry a reader. */
  public enum Weight {
    /** Nothing speaks against the line. */
    FINE,
    /** To be looked at before the line is used. */
    CARE,
    /** A figure, neither good nor bad. */
    PLAIN
  }
}
