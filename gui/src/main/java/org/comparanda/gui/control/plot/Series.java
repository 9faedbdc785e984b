package org.comparanda.gui.control.plot;

import java.util.List;

/**
 * Points of one kind.
 *
 * @param name as the legend says it
 * @param face italic for genus and species
 * @param mark their shape
 * @param light their fill on a light ground
 * @param dark their fill on a dark ground
 * @param points the points
 */
public record Series(
    String name, Lettering.Face face, Mark mark, Tint light, Tint dark, List<Point> points) {
  public Series {
    points = List.copyOf(points);
  }

  /**
   * One point.
   *
   * @param id what a click on it gives
   * @param tip what is said when the pointer is over it
   * @param at its place, in data units
   */
  public record Point(String id, String tip, Xy at) {}
}
