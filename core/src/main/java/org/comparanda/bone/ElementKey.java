package org.comparanda.bone;

/**
 * Key of an element (which bone) in the protocol, for example {@code humerus}. Elements are data,
 * so the key is a text; it is lower case and never blank.
 */
public record ElementKey(String value) implements Comparable<ElementKey> {
  /** For tables that name no element at all (every row is the same, unnamed thing). */
  public static final ElementKey UNNAMED = new ElementKey("unnamed");

  public ElementKey {
    if (value.isBlank()) {
      throw new IllegalArgumentException("An element needs a key.");
    }
  }

  @Override
  public int compareTo(ElementKey other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
