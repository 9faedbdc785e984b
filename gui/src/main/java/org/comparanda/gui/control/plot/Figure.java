package org.comparanda.gui.control.plot;

import java.util.List;
import java.util.Optional;

/**
 * All that a plot shows, in data units; no pixel in it.
 *
 * @param x horizontal axis
 * @param y vertical axis
 * @param series the points, by kind
 * @param curves lines
 * @param bands bands, drawn in this order under everything
 * @param bone the bone in hand
 * @param note small print under the plot (where the data come from), may be empty
 */
public record Figure(
    Axis x,
    Axis y,
    List<Series> series,
    List<Curve> curves,
    List<Band> bands,
    Optional<BonePlace> bone,
    String note) {
  public Figure {
    series = List.copyOf(series);
    curves = List.copyOf(curves);
    bands = List.copyOf(bands);
  }
}
