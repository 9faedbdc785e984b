package org.comparanda.gui.control.outline;

import javafx.geometry.Point2D;
import org.comparanda.gui.control.outline.BoneSketch.Box;
import org.comparanda.gui.control.outline.BoneSketch.Jaws;

/**
 * Where the dimension line of a caliper stands: beside the bone when its edge is near, otherwise
 * across it at the place measured.
 *
 * @param touchFrom first point touched, in the drawing's coordinates
 * @param touchTo second point touched
 * @param aside from the points touched to the dimension line
 * @param across direction from the first to the second point, length 1
 */
record JawsPlan(Point2D touchFrom, Point2D touchTo, Point2D aside, Point2D across) {
  private static final double NEAR = 26;
  private static final double CLEAR = 3;

  static JawsPlan of(Jaws jaws, Box box) {
    Point2D from = new Point2D(jaws.x1(), jaws.y1());
    Point2D to = new Point2D(jaws.x2(), jaws.y2());
    Point2D across = to.subtract(from).normalize();
    Point2D square = new Point2D(-across.getY(), across.getX());
    Point2D middle = from.midpoint(to);
    double ahead = toEdge(middle, square, box);
    double behind = toEdge(middle, square.multiply(-1), box);
    double least = Math.min(ahead, behind);
    Point2D way = ahead <= behind ? square : square.multiply(-1);
    double far = least > NEAR ? 0 : least + CLEAR;
    return new JawsPlan(from, to, way.multiply(far), across);
  }

  /** Whether the dimension line runs across the bone, at the place itself. */
  boolean inPlace() {
    return aside.magnitude() == 0;
  }

  Point2D lineFrom() {
    return touchFrom.add(aside);
  }

  Point2D lineTo() {
    return touchTo.add(aside);
  }

  private static double toEdge(Point2D from, Point2D way, Box box) {
    double x =
        way.getX() > 1e-9
            ? (box.x() + box.width() - from.getX()) / way.getX()
            : way.getX() < -1e-9 ? (box.x() - from.getX()) / way.getX() : Double.MAX_VALUE;
    double y =
        way.getY() > 1e-9
            ? (box.y() + box.height() - from.getY()) / way.getY()
            : way.getY() < -1e-9 ? (box.y() - from.getY()) / way.getY() : Double.MAX_VALUE;
    return Math.max(0, Math.min(x, y));
  }
}
