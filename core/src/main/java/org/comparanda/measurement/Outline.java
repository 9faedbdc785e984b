package org.comparanda.measurement;

import java.util.List;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;

/**
 * Line drawing of one element, in one or more views.
 *
 * <p>All views of an element share one coordinate space (no unit, y downwards); each view lies in
 * its own box of it. The landmarks of a measurement are given in the same space, so they tell which
 * view shows the measurement. Paths are SVG path data.
 */
public record Outline(ElementKey element, List<View> views, String source) {
  public Outline {
    views = List.copyOf(views);
  }

  /** The first view whose box holds both landmarks of a measurement. */
  public Optional<View> viewOf(Measurement.Landmarks landmarks) {
    return views.stream()
        .filter(
            v ->
                v.box().holds(landmarks.x1(), landmarks.y1())
                    && v.box().holds(landmarks.x2(), landmarks.y2()))
        .findFirst();
  }

  /**
   * One view of the element.
   *
   * @param key key within the outline
   * @param caption what is seen, for the person at the bench
   * @param box where the view lies
   * @param edge the outer line, closed
   * @param lines inner lines, each one stroke
   * @param bands the part of the box that each portion takes up, for shading what is missing
   */
  public record View(
      String key, String caption, Box box, String edge, List<String> lines, List<Band> bands) {
    public View {
      lines = List.copyOf(lines);
      bands = List.copyOf(bands);
    }
  }

  /** A portion and the box that it takes up. */
  public record Band(Portion portion, Box box) {}

  /** An upright rectangle: its upper left corner and its size. */
  public record Box(double x, double y, double width, double height) {
    /** Whether the point lies in the box or on its edge. */
    public boolean holds(double px, double py) {
      return px >= x && px <= x + width && py >= y && py <= y + height;
    }
  }
}
