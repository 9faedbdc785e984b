package org.comparanda.bone;

/** How old the bones of a tray are; decides how firmly a suggestion may speak. */
public enum BoneAge {
  RECENT,
  ARCHAEOLOGICAL,
  FOSSIL,
  NOT_KNOWN
}
