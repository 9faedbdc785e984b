package org.comparanda.reference;

/** Where a comparative animal is kept; only own ones show a drawer. */
public enum Source {
  OWN_DRAWER,
  ANOTHER_HOUSE,
  PUBLICATION
}
