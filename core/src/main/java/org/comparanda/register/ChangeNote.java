package org.comparanda.register;

import org.comparanda.measurement.PersonId;

/**
 * Who changes something, and why; when is the register's own clock.
 *
 * <p>Errors: {@link IllegalArgumentException} without a reason
 */
public record ChangeNote(PersonId who, String why) {
  public ChangeNote {
    if (why.isBlank()) {
      throw new IllegalArgumentException("A change of the register needs a reason.");
    }
  }
}
