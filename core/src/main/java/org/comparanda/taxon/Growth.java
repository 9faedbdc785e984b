package org.comparanda.taxon;

/** Whether animals of a taxon stop growing. */
public enum Growth {
  DETERMINATE,
  INDETERMINATE
}
