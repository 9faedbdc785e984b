package org.comparanda.capture;

import java.util.Arrays;
import java.util.Optional;

/**
 * What a bench is asked for that is no reading: 0 and its digit on an empty field, then Enter. No
 * length is typed that way, so neither can be taken for the other. 0 alone lists them.
 */
public enum Errand {
  /** The definition of the measurement, large. */
  DEFINITION(0),
  /** More bones like this one, under the tray's next numbers. */
  MORE_LIKE_THIS(1),
  /** The other side of the same animal, measured side by side. */
  OTHER_SIDE(2),
  /** The bone in hand is another element after all. */
  OTHER_ELEMENT(3),
  /** The bone in hand is several pieces that fit each other. */
  PIECES(4),
  /** This measurement crosses a break, or doesn't. */
  ACROSS_BREAK(5),
  /** Found together with another bone. */
  FOUND_TOGETHER(6),
  /** The slip of the bone in hand. */
  SLIP(7),
  /** Which caliper is in hand. */
  CALIPER(8),
  /** All keys on one page, to be printed. */
  KEY_CARD(9);

  private final int number;

  Errand(int number) {
    this.number = number;
  }

  /** The digit after 0. */
  public int number() {
    return number;
  }

  /** The errand that a field's whole text asks for, if it does. */
  public static Optional<Errand> ofText(String text) {
    return Arrays.stream(values()).filter(e -> text.equals("0" + e.number)).findFirst();
  }
}
