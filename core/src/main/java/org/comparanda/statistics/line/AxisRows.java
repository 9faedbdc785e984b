package org.comparanda.statistics.line;

import org.comparanda.statistics.Outcome;

/** Whether rows can carry a major axis. */
final class AxisRows {
  private AxisRows() {}

  static Outcome<Moments> moments(Design design) {
    if (design.predictors() != 1) {
      return Outcome.none(
          "A major axis has one predictor, got " + design.predictors() + ".", "Choose one.");
    }
    if (!design.finite()) {
      return Outcome.none(
          "A value of the line is not a finite number.",
          "Look for zero or negative values where logs are taken.");
    }
    if (design.rows() < 3) {
      return Outcome.none(
          "A line can't be fitted to " + design.rows() + " row(s).", "At least 3 are needed.");
    }
    Moments m = Moments.of(design.column(0), design.response());
    return m.flat()
        ? Outcome.none(
            "All values of x or all values of y are equal.",
            "A line needs animals of different size.")
        : Outcome.of(m);
  }
}
