package org.comparanda.gui.control.plot;

/** A rectangle on a drawing, x to the right, y downwards. */
public record Box(double x, double y, double width, double height) {
  double right() {
    return x + width;
  }

  double bottom() {
    return y + height;
  }

  boolean holds(Xy at) {
    return at.x() >= x && at.x() <= right() && at.y() >= y && at.y() <= bottom();
  }
}
