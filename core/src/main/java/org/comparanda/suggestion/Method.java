package org.comparanda.suggestion;

/** How shares are reckoned. */
public enum Method {
  /** By rule: linear, predictive or pooled shrinkage. */
  AUTO,
  LINEAR,
  PREDICTIVE,
  QUADRATIC,
  REGULARISED,
  SHRUNK_POOLED,
  SHRUNK_PER_TAXON,
  /** Votes of the nearest animals on standardised columns, their number tuned. */
  NEAREST,
  /** The nearest animal alone, on the numbers as they are compared. */
  NEAREST_ONE,
  FOREST
}
