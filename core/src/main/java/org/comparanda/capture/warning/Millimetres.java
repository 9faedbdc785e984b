package org.comparanda.capture.warning;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths in the words of a warning: at most two decimals, no closing zeros. */
final class Millimetres {
  private Millimetres() {}

  static String text(double mm) {
    BigDecimal rounded = BigDecimal.valueOf(mm).setScale(2, RoundingMode.HALF_UP);
    return rounded.stripTrailingZeros().toPlainString() + " mm";
  }
}
