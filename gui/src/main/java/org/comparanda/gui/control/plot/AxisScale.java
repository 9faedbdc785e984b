package org.comparanda.gui.control.plot;

/** How values run along an axis. */
public enum AxisScale {
  PLAIN {
    @Override
    double place(double value) {
      return value;
    }

    @Override
    double value(double place) {
      return place;
    }
  },
  /** Only for values above zero. */
  LOG {
    @Override
    double place(double value) {
      return Math.log10(value);
    }

    @Override
    double value(double place) {
      return Math.pow(10, place);
    }
  };

  abstract double place(double value);

  abstract double value(double place);
}
