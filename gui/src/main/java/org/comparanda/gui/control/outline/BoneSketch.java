package org.comparanda.gui.control.outline;

import java.util.List;
import java.util.Optional;

/**
 * One view of a bone as it is drawn. All coordinates are the drawing's own.
 *
 * @param box the part of the drawing shown
 * @param edge outline, SVG path data
 * @param lines inner lines, SVG path data
 * @param missing boxes of what is not there on the fragment in hand
 * @param jaws the measurement being taken
 * @param caption from where the bone is seen
 */
public record BoneSketch(
    Box box,
    String edge,
    List<String> lines,
    List<Box> missing,
    Optional<Jaws> jaws,
    String caption) {
  public BoneSketch {
    lines = List.copyOf(lines);
    missing = List.copyOf(missing);
  }

  /** A rectangle, y downwards. */
  public record Box(double x, double y, double width, double height) {}

  /**
   * A caliper's jaws at two points.
   *
   * @param label what is written at the dimension line: the code or the reading
   */
  public record Jaws(double x1, double y1, double x2, double y2, String label) {}
}
