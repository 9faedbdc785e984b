package org.comparanda.suggestion;

/** The answers that the Bench may give, in the order in which they are decided. */
public enum Answer {
  YOUNG_BONE,
  NOT_FITTED,
  SHELF_TOO_THIN,
  NOTHING_FITS,
  POOR_FIT,
  FITS_ONE,
  NEVER_TESTED,
  FITS_A_FEW,
  FITS_GROUP_ONLY
}
