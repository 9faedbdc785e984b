package org.comparanda.measurement;

/** Number of one physical bone, on a tray or on the shelf. Never blank. */
public record BoneId(String value) implements Comparable<BoneId> {
  public BoneId {
    if (value.isBlank()) {
      throw new IllegalArgumentException("A bone needs a number.");
    }
  }

  @Override
  public int compareTo(BoneId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
