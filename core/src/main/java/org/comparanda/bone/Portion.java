package org.comparanda.bone;

/** The part of an element that is in hand. */
public enum Portion {
  WHOLE,
  PROXIMAL,
  SHAFT,
  DISTAL,
  OTHER
}
