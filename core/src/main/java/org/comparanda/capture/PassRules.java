package org.comparanda.capture;

/**
 * What the house says about takes.
 *
 * @param repeats whether a take may follow another of the same field without the bone put down
 */
public record PassRules(Repeats repeats) {
  /** Takes back to back. */
  public enum Repeats {
    REFUSED,
    ALLOWED
  }

  /** No takes back to back: they agree better than two people ever would. */
  public static PassRules withDefaults() {
    return new PassRules(Repeats.REFUSED);
  }

  public PassRules withRepeats(Repeats other) {
    return new PassRules(other);
  }
}
