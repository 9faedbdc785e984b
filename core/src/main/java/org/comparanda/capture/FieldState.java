package org.comparanda.capture;

/**
 * What the keys act on.
 *
 * @param text what the field holds
 * @param showing what lies over the field, if anything
 */
public record FieldState(String text, Showing showing) {
  /** What the field shows beside its text. */
  public enum Showing {
    FIELD,
    PROPOSAL,
    REASONS,
    /** A question that digits and Enter answer. */
    ASKED,
    STOP_QUESTION
  }

  /** An empty field. */
  public static FieldState empty() {
    return new FieldState("", Showing.FIELD);
  }

  public FieldState withText(String other) {
    return new FieldState(other, showing);
  }

  public FieldState withShowing(Showing other) {
    return new FieldState(text, other);
  }
}
