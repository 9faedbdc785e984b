package org.comparanda.suggestion;

/** On which scale animals are compared. */
public enum Scale {
  /** Natural logs of the values (mm): the ordinary way. */
  LN,
  /** The values as they are, so that results can be compared with other programs. */
  RAW,
  /** p − 1 orthonormal contrasts of the logs: shape without size; needs three measurements. */
  PROPORTIONS
}
