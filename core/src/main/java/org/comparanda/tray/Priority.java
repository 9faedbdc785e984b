package org.comparanda.tray;

/**
 * How soon a tray is wanted.
 *
 * <p>Errors: {@link IllegalArgumentException} if the rank is not 1 to 5, or is set without a
 * reason.
 *
 * @param rank 1 is first, 5 is last, 3 unless set
 * @param reason why it was moved
 * @param requestedBy who asked for it, as written; may be empty
 */
public record Priority(int rank, String reason, String requestedBy) {
  private static final int UNLESS_SET = 3;

  public Priority {
    if (rank < 1 || rank > 5) {
      throw new IllegalArgumentException(
          "A priority is a whole number from 1 (first) to 5 (last), not " + rank + ".");
    }
    if (rank != UNLESS_SET && reason.isBlank()) {
      throw new IllegalArgumentException("A tray that is moved up or down needs a reason.");
    }
  }

  /** In the middle, as long as nobody set it. */
  public static Priority ordinary() {
    return new Priority(UNLESS_SET, "", "");
  }
}
