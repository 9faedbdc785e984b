package org.comparanda.measurement;

/** With what a length is taken; the two are never put beside each other in one fit. */
public enum How {
  /** Straight, between the jaws of a caliper. */
  CALIPER,
  /** Along the curve, with a tape. */
  TAPE
}
