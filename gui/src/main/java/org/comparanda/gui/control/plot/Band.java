package org.comparanda.gui.control.plot;

import java.util.List;

/**
 * A band around a line.
 *
 * @param name as the legend says it
 * @param kind decides how it is drawn
 * @param edges lower and upper edge, x rising, in data units
 */
public record Band(String name, Kind kind, List<Edge> edges) {
  public Band {
    edges = List.copyOf(edges);
  }

  /** What a band holds; each kind looks its own way, in grey print too. */
  public enum Kind {
    /** Single animals: pale, with dashed edges. */
    PREDICTION,
    /** The line itself: darker, without edges. */
    CONFIDENCE,
    /** Single animals by a second line: dotted edges, no fill. */
    PREDICTION_BESIDE
  }

  /** Both edges at one x. */
  public record Edge(double x, double low, double high) {}
}
