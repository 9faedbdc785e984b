package org.comparanda.check;

/** What a finding says is wrong. */
public enum FindingKind {
  UNIT_SLIP,
  SWAPPED_DIGITS,
  SIDES_DIFFER,
  PART_LONGER,
  OUTLIER,
  NUMBER_TWICE,
  SPELLED_TWO_WAYS,
  TWO_TAXA,
  YOUNG_IN_FIT,
  CAST_IN_FIT,
  FEW_ANIMALS,
  UNKNOWN_CODE,
  /** A cell of a table that holds no number where one should be; found while reading it. */
  UNREADABLE
}
