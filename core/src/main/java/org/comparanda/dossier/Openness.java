package org.comparanda.dossier;

/** Whether exact places leave the house. */
public enum Openness {
  PLACES_HELD_BACK,
  PLACES_OPENED
}
