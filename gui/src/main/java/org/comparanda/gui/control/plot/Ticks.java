package org.comparanda.gui.control.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Where an axis is labelled: round numbers inside its ends, about five of them.
 *
 * @param labelled values with a label, rising
 * @param between values with a short stroke only
 */
public record Ticks(List<Double> labelled, List<Double> between) {
  private static final List<List<Double>> LOG_STEPS =
      List.of(List.of(1.0), List.of(1.0, 3.0), List.of(1.0, 2.0, 5.0));
  private static final int FEWEST = 3;
  private static final int MOST = 8;

  public Ticks {
    labelled = List.copyOf(labelled);
    between = List.copyOf(between);
  }

  /** The ticks of an axis, about five. */
  public static Ticks of(Axis axis) {
    return of(axis, 5);
  }

  /** The ticks of an axis; about so many where it is plain. */
  public static Ticks of(Axis axis, int about) {
    return axis.scale() == AxisScale.LOG
        ? logarithmic(axis.low(), axis.high())
        : plain(axis.low(), axis.high(), about);
  }

  private static Ticks plain(double low, double high, int about) {
    double rough = (high - low) / about;
    double decade = Math.pow(10, Math.floor(Math.log10(rough)));
    double step =
        DoubleStream.of(1, 2, 5, 10)
            .map(m -> m * decade)
            .filter(s -> s >= rough * 0.999)
            .min()
            .orElse(10 * decade);
    return new Ticks(multiples(step, low, high), List.of());
  }

  private static List<Double> multiples(double step, double low, double high) {
    List<Double> values = new ArrayList<>();
    for (long i = (long) Math.ceil(low / step - 1e-9); i * step <= high + step * 1e-9; i++) {
      values.add(step < 1 ? i / (1 / step) : i * step);
    }
    return values;
  }

  private static Ticks logarithmic(double low, double high) {
    List<Double> ones = decades(low, high, List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0));
    for (List<Double> steps : LOG_STEPS) {
      List<Double> values = decades(low, high, steps);
      if (values.size() >= FEWEST && values.size() <= MOST) {
        return new Ticks(values, ones);
      }
    }
    return high / low > 30
        ? new Ticks(decades(low, high, List.of(1.0)), List.of())
        : plain(low, high, 5);
  }

  private static List<Double> decades(double low, double high, List<Double> steps) {
    List<Double> values = new ArrayList<>();
    for (int k = (int) Math.floor(Math.log10(low)); Math.pow(10, k) <= high; k++) {
      for (double step : steps) {
        double value = k < 0 ? step / Math.pow(10, -k) : step * Math.pow(10, k);
        if (value >= low && value <= high) {
          values.add(value);
        }
      }
    }
    return values;
  }
}
