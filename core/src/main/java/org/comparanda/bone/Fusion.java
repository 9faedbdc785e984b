package org.comparanda.bone;

/** State of one growing end of a bone. */
public enum Fusion {
  UNFUSED,
  FUSING,
  FUSED,
  CANT_SEE,
  NOT_APPLICABLE
}
