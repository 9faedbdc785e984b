package org.comparanda.gui.control.plot;

import java.util.List;

/** Draws everything lower on the page by so much, to leave room for a heading. */
public record LoweredPen(Pen pen, double by) implements Pen {
  @Override
  public void area(List<Xy> corners, Tint fill, Tint outline, double width) {
    pen.area(lowered(corners), fill, outline, width);
  }

  @Override
  public void disc(Xy centre, double radius, Tint fill, Tint outline, double width) {
    pen.disc(lowered(centre), radius, fill, outline, width);
  }

  @Override
  public void path(List<Xy> points, Tint colour, double width, Dash dash) {
    pen.path(lowered(points), colour, width, dash);
  }

  @Override
  public void text(String text, Xy at, Lettering lettering, Tint colour) {
    pen.text(text, lowered(at), lettering, colour);
  }

  @Override
  public void within(Box box, Runnable drawing) {
    pen.within(new Box(box.x(), box.y() + by, box.width(), box.height()), drawing);
  }

  private Xy lowered(Xy p) {
    return new Xy(p.x(), p.y() + by);
  }

  private List<Xy> lowered(List<Xy> points) {
    return points.stream().map(this::lowered).toList();
  }
}
