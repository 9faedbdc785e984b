package org.comparanda.reference;

/** Hears now and then how far a long addition has come, and may stop it. */
public interface Progress {
  /** Whether to go on after so many animals; when not, nothing is stored. */
  boolean goOn(long animalsSoFar);

  /** Goes on to the end. */
  static Progress toTheEnd() {
    return animalsSoFar -> true;
  }
}
