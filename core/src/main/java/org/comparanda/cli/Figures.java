package org.comparanda.cli;

import java.util.Locale;

/** Numbers as they stand in our plain text; JSON has them in full. */
final class Figures {
  private Figures() {}

  /** A share or typicality: four decimals, or an exponent where they would all be zero. */
  static String chance(double value) {
    return value != 0 && value < 0.00005
        ? String.format(Locale.ROOT, "%.0e", value)
        : String.format(Locale.ROOT, "%.4f", value);
  }

  /** Five significant digits without needless zeros. */
  static String five(double value) {
    if (value == 0 || (Math.abs(value) >= 1e-4 && Math.abs(value) < 1e9)) {
      return new java.math.BigDecimal(value)
          .round(new java.math.MathContext(5))
          .stripTrailingZeros()
          .toPlainString();
    }
    return String.format(Locale.ROOT, "%.4e", value);
  }

  /** A rate in per cent without decimals. */
  static String percent(double rate) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * rate);
  }
}
