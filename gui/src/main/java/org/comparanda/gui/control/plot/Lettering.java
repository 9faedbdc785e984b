package org.comparanda.gui.control.plot;

/**
 * How a text is set.
 *
 * @param size in points
 * @param face plain, bold or italic (genus and species only)
 * @param anchor which end of the text stands at the place given
 * @param turn level or reading upwards
 */
public record Lettering(double size, Face face, Anchor anchor, Turn turn) {
  /** Cut of the type. */
  public enum Face {
    PLAIN,
    BOLD,
    ITALIC
  }

  /** Which end of the text stands at its place. */
  public enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** Direction in which the text reads. */
  public enum Turn {
    LEVEL,
    UPWARDS
  }

  static Lettering of(double size) {
    return new Lettering(size, Face.PLAIN, Anchor.START, Turn.LEVEL);
  }

  Lettering with(Face other) {
    return new Lettering(size, other, anchor, turn);
  }

  Lettering with(Anchor other) {
    return new Lettering(size, face, other, turn);
  }

  Lettering with(Turn other) {
    return new Lettering(size, face, anchor, other);
  }
}
