package org.comparanda.demo;

/** The kinds of fault that can be planted into a copy of the shelf; see {@code faults.csv}. */
public enum FaultKind {
  TIMES_TEN,
  TIMES_INCH,
  DIGITS_SWAPPED,
  SIDES_APART,
  OUTLIER,
  PART_LONGER,
  TAXON_MISSPELT,
  NUMBER_TWICE,
  TWO_TAXA,
  YOUNG_AS_ADULT,
  CAST_UNFLAGGED,
  CODE_UNKNOWN
}
