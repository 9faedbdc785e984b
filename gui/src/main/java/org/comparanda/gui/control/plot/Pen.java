package org.comparanda.gui.control.plot;

import java.util.List;

/** The few strokes that a figure needs; one pen per medium, so every medium shows the same. */
public interface Pen {
  /** A closed shape; the outline is left out where its width is 0. */
  void area(List<Xy> corners, Tint fill, Tint outline, double width);

  /** A filled circle with a thin outline. */
  void disc(Xy centre, double radius, Tint fill, Tint outline, double width);

  /** An open line through the points. */
  void path(List<Xy> points, Tint colour, double width, Dash dash);

  /** A line of text; its place is on the baseline. */
  void text(String text, Xy at, Lettering lettering, Tint colour);

  /** Whatever the drawing does outside the box stays invisible. */
  void within(Box box, Runnable drawing);
}
