package org.comparanda.gui.control.plot;

import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * One axis of a figure.
 *
 * @param title what is shown, with its unit
 * @param scale plain or logarithmic
 * @param low value at the left or lower end
 * @param high value at the other end, above {@code low}
 * @param locale how its numbers are written
 */
public record Axis(String title, AxisScale scale, double low, double high, Locale locale) {
  public Axis {
    if (!(low < high) || (scale == AxisScale.LOG && low <= 0)) {
      throw new IllegalArgumentException(
          "An axis runs upwards (from above zero if logarithmic), not " + low + " to " + high);
    }
  }

  /** An axis whose numbers have a decimal point. */
  public Axis(String title, AxisScale scale, double low, double high) {
    this(title, scale, low, high, Locale.ROOT);
  }

  /** The same axis with its numbers written as in a language. */
  public Axis in(Locale language) {
    return new Axis(title, scale, low, high, language);
  }

  /** A number on it. */
  String label(double value) {
    return Letters.number(value, locale);
  }

  /** An axis that shows all the values with a twentieth of room at either end. */
  public static Axis around(String title, AxisScale scale, DoubleStream values) {
    var span = values.map(scale::place).filter(Double::isFinite).summaryStatistics();
    double low = span.getCount() == 0 ? 0 : span.getMin();
    double high = span.getCount() == 0 ? 1 : span.getMax();
    double room = high > low ? (high - low) / 20 : Math.max(Math.abs(high), 1) / 10;
    return new Axis(title, scale, scale.value(low - room), scale.value(high + room));
  }

  /** Where a value lies: 0 at the low end, 1 at the high end, beyond that outside. */
  double part(double value) {
    double from = scale.place(low);
    return (scale.place(value) - from) / (scale.place(high) - from);
  }
}
