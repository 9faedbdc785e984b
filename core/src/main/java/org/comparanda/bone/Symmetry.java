package org.comparanda.bone;

/** Whether an element comes in pairs or lies on the midline. */
public enum Symmetry {
  SIDED,
  AXIAL
}
