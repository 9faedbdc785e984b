package org.comparanda.gui.control.plot;

import java.util.List;

/**
 * A fitted line.
 *
 * @param name as the legend says it
 * @param dash its pattern
 * @param points along it, x rising, in data units
 */
public record Curve(String name, Dash dash, List<Xy> points) {
  public Curve {
    points = List.copyOf(points);
  }
}
