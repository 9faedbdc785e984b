package org.comparanda.capture;

import java.util.Arrays;
import java.util.Optional;

/** Why a measurement can't be taken; chosen by number. */
public enum NotPossible {
  BROKEN(1),
  WORN(2),
  MATRIX(3),
  RECONSTRUCTED(4),
  UNSURE_WHERE(5);

  private final int number;

  NotPossible(int number) {
    this.number = number;
  }

  /** The key that chooses it. */
  public int number() {
    return number;
  }

  public static Optional<NotPossible> ofKey(char key) {
    return Arrays.stream(values()).filter(reason -> '0' + reason.number == key).findFirst();
  }
}
