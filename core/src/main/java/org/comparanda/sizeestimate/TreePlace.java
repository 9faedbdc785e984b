package org.comparanda.sizeestimate;

/** Where on a tree a bone's animal is taken to stand. */
public enum TreePlace {
  /** At its taxon's tip, through the mean of that taxon's animals. */
  OWN_MEAN,
  /** At its taxon's tip, told from the other taxa alone. */
  EMPTY_TIP,
  /** At the end of a branch from the root as long as the deepest: its taxon isn't known there. */
  ROOT
}
