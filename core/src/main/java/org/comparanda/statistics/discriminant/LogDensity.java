package org.comparanda.statistics.discriminant;

/** Log density of a row at a squared distance from the mean of so many rows, up to a constant. */
public interface LogDensity {
  double at(double rows, double squared);

  /** Normal with the estimates plugged in. */
  static LogDensity normal() {
    return (rows, squared) -> -0.5 * squared;
  }
}
