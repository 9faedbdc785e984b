package org.comparanda.stock;

import org.comparanda.bone.ElementKey;

/** Hears how far something is that goes through the shelf element by element, and may end it. */
public interface ElementWatch {
  /** An element begins: its number, of how many. */
  void begins(ElementKey element, int number, int of);

  /** Asked before each element and often within one; yes ends it without a result. */
  default boolean stopped() {
    return false;
  }
}
