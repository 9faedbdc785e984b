package org.comparanda.gui.sizedesk;

/**
 * Something with a size that can be asked for or from.
 *
 * @param key as the size line names it
 * @param name short, for axes and sentences
 * @param noun as it stands inside a sentence
 * @param definition what it is, in words; may be empty
 * @param unit mm, g, or empty for a plain number
 */
public record Quantity(String key, String name, String noun, String definition, String unit) {
  /** Long, for the list to choose from. */
  String label() {
    return definition.isEmpty() ? name : name + ", " + definition;
  }

  /** Whether it belongs to the whole body. */
  boolean ofBody() {
    return key.equals(Quantities.BODY_LENGTH) || key.equals(Quantities.BODY_MASS);
  }
}
