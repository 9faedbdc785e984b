package org.comparanda.sizeestimate;

/** How a size line is fitted. SMA and MA answer scaling questions and do not predict. */
public enum LineMethod {
  OLS,
  SMA,
  MA,
  PGLS,
  /** The bone on what is wanted, read backwards: for a bone that is the error-prone one. */
  INVERSE
}
