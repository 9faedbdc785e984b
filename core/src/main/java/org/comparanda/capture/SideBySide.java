package org.comparanda.capture;

/**
 * Left and right of one animal measured side by side: each measurement on the left bone, then on
 * the right one. Whose turn it is follows from the rows of both, so it comes back after a restart.
 */
public record SideBySide(Passes left, Passes right) {
  /** One of the two. */
  public enum Turn {
    LEFT,
    RIGHT
  }

  /**
   * Whose field is due: the one that is behind, the left one where both are level. A bone with
   * nothing due waits.
   */
  public Turn turn() {
    return place(right) < place(left) ? Turn.RIGHT : Turn.LEFT;
  }

  /** Whose row is the newest; undo takes that one back. */
  public Turn newest() {
    return right.newest() > left.newest() ? Turn.RIGHT : Turn.LEFT;
  }

  /** Running place of the field that is due, over all passes; after the last one when none is. */
  private static long place(Passes passes) {
    return passes
        .current()
        .map(
            now ->
                now.pass() * 1000L + passes.measurements().indexOf(passes.measurement(now.code())))
        .orElse(Long.MAX_VALUE);
  }
}
