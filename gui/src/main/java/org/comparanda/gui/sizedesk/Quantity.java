package org.comparanda.gui.sizedesk;

/**
 * Something with a size that can be asked for or from.
 *
 * @param key as the size line names it
 * @param name short, for axes and sentences
 * @param label long, for the list to choose from
 * @param unit mm, g, or empty for a plain number
 */
public record Quantity(String key, String name, String label, String unit) {
  /** Whether it belongs to the whole body. */
  boolean ofBody() {
    return key.equals(Quantities.BODY_LENGTH) || key.equals(Quantities.BODY_MASS);
  }
}
