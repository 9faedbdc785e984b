package org.comparanda.bone;

/** The side of the body that a bone comes from; {@link #AXIAL} only for midline elements. */
public enum Side {
  LEFT,
  RIGHT,
  AXIAL,
  NOT_KNOWN
}
