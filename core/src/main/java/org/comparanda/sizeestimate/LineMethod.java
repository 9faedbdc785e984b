package org.comparanda.sizeestimate;

/** How a size line is fitted. Only OLS and PGLS predict; SMA and MA answer scaling questions. */
public enum LineMethod {
  OLS,
  SMA,
  MA,
  PGLS
}
