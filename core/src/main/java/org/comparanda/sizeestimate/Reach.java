package org.comparanda.sizeestimate;

/** How far a bone lies from the animals of the line. */
public enum Reach {
  /** Between the smallest and the largest. */
  WITHIN,
  /** Beyond one of them: the interval widens and holds only if the line goes on straight. */
  OUTSIDE,
  /**
   * More than half as large again as the largest, or less than two thirds of the smallest (common
   * practice, no source): only the slope speaks.
   */
  SCALING_GUESS
}
