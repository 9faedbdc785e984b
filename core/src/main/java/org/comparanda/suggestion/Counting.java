package org.comparanda.suggestion;

/** What counts as one row of the shelf. */
public enum Counting {
  /** One row per animal, the mean of its sides: the animal is the unit. */
  ANIMALS,
  /** Each bone a row, as many outside figures have it; for comparison only. */
  BONES
}
