package org.comparanda.sizeestimate;

/** Scale on which a line is fitted, for x and y alike. */
public enum LineScale {
  LOG10,
  LN,
  RAW
}
