package org.comparanda.suggestion;

/** How shares are reckoned. */
public enum Method {
  /** By rule, so that anyone can foresee it: linear, predictive or pooled shrinkage. */
  AUTO,
  LINEAR,
  PREDICTIVE,
  QUADRATIC,
  REGULARISED,
  SHRUNK_POOLED,
  SHRUNK_PER_TAXON,
  NEAREST,
  FOREST
}
