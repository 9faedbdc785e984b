package org.comparanda.statistics;

/**
 * An interval and how sure it is.
 *
 * <p>Which kind it is (confidence, prediction, one or two limits) is said by the method that gives
 * it. Errors: {@link IllegalArgumentException} if a limit is not a number, the limits are swapped
 * or the level is not between 0 and 1.
 *
 * @param level for instance 0.95
 */
public record Interval(double lower, double upper, double level) {
  public Interval {
    if (!(lower <= upper)) {
      throw new IllegalArgumentException("Limits out of order: " + lower + " and " + upper);
    }
    if (!(level > 0 && level < 1)) {
      throw new IllegalArgumentException("A level lies between 0 and 1, not at " + level);
    }
  }

  /** Whether the value lies within, limits included. */
  public boolean contains(double value) {
    return lower <= value && value <= upper;
  }
}
