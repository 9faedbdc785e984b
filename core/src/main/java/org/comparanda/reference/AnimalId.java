package org.comparanda.reference;

/** Catalogue number of one individual. Never blank. */
public record AnimalId(String value) implements Comparable<AnimalId> {
  public AnimalId {
    if (value.isBlank()) {
      throw new IllegalArgumentException("An animal needs a catalogue number.");
    }
  }

  @Override
  public int compareTo(AnimalId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
