package org.comparanda.gui.control.plot;

import java.util.List;

/** Stroke patterns that stay apart in black and white print. */
public enum Dash {
  SOLID(0, 0),
  DASHED(6, 4),
  DOTTED(1.5, 3);

  private final double stroke;
  private final double gap;

  Dash(double stroke, double gap) {
    this.stroke = stroke;
    this.gap = gap;
  }

  /** Lengths of stroke and gap; none for a solid line. */
  List<Double> pattern() {
    return gap > 0 ? List.of(stroke, gap) : List.of();
  }
}
