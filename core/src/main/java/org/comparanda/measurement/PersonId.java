package org.comparanda.measurement;

/** Who took a reading or made a call: an id; the name is kept apart so that it can be blanked. */
public record PersonId(String value) {
  public PersonId {
    if (value.isBlank()) {
      throw new IllegalArgumentException("A person needs an id.");
    }
  }
}
