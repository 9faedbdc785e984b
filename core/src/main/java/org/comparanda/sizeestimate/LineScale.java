package org.comparanda.sizeestimate;

/** Scale on which a line is fitted, for x and y alike. */
public enum LineScale {
  LOG10,
  LN,
  RAW;

  /** From a value's own unit to this scale. */
  public double forward(double value) {
    return switch (this) {
      case LOG10 -> Math.log10(value);
      case LN -> Math.log(value);
      case RAW -> value;
    };
  }

  /** From this scale to the value's own unit. */
  public double back(double value) {
    return switch (this) {
      case LOG10 -> Math.pow(10, value);
      case LN -> Math.exp(value);
      case RAW -> value;
    };
  }

  /** Whether logs are taken. */
  public boolean logs() {
    return this != RAW;
  }

  /** Natural log of the base of the logs; 1 for natural logs and for none. */
  public double lnOfBase() {
    return this == LOG10 ? Math.log(10) : 1;
  }
}
