package org.comparanda.gui.control.plot;

import java.util.ArrayList;
import java.util.List;

/** Shapes of points, so that colour alone never tells two kinds apart. */
public enum Mark {
  DISC(0, 0, 0),
  TRIANGLE(3, 1, -90),
  SQUARE(4, 1, -45),
  DIAMOND(4, 1, -90),
  TRIANGLE_DOWN(3, 1, 90),
  PENTAGON(5, 1, -90),
  STAR(5, 0.45, -90),
  CROSS(4, 0.4, -45);

  private final int corners;
  private final double waist;
  private final double turn;

  Mark(int corners, double waist, double turn) {
    this.corners = corners;
    this.waist = waist;
    this.turn = turn;
  }

  /**
   * Draws the mark.
   *
   * @param radius of the disc that has the same weight to the eye
   */
  public void draw(Pen pen, Xy at, double radius, Tint fill, Tint outline) {
    if (this == DISC) {
      pen.disc(at, radius, fill, outline, 0.7);
    } else {
      pen.area(outlineAround(at, radius * reach()), fill, outline, 0.7);
    }
  }

  private double reach() {
    return waist < 1 ? 1.45 : corners == 3 ? 1.35 : 1.2;
  }

  private List<Xy> outlineAround(Xy at, double radius) {
    List<Xy> points = new ArrayList<>();
    int steps = waist < 1 ? 2 * corners : corners;
    for (int i = 0; i < steps; i++) {
      double angle = Math.toRadians(turn + 360.0 * i / steps);
      double r = waist < 1 && i % 2 == 1 ? radius * waist : radius;
      points.add(new Xy(at.x() + r * Math.cos(angle), at.y() + r * Math.sin(angle)));
    }
    return points;
  }
}
