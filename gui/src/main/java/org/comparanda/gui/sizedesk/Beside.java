package org.comparanda.gui.sizedesk;

/** What a second line is fitted to, for comparison. */
public enum Beside {
  NOTHING,
  /** All taxa that have both values. */
  ALL,
  /** Those that the first line leaves out. */
  LEFT_OUT
}
