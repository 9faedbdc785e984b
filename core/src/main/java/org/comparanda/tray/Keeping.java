package org.comparanda.tray;

/**
 * Where a bone goes next, and whether it may leave the house.
 *
 * @param goesTo box, shelf or drawer; empty while not decided
 */
public record Keeping(String goesTo, Access access) {
  /** Whether exports hold the bone. */
  public enum Access {
    OPEN,
    /** Stays in the house unless opened by a person with that right. */
    RESTRICTED
  }

  /** No place yet, may leave. */
  public static Keeping ordinary() {
    return new Keeping("", Access.OPEN);
  }
}
