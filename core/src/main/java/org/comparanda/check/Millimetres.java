package org.comparanda.check;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths in the words of a finding: at most three decimals, no closing zeros. */
final class Millimetres {
  private Millimetres() {}

  static double rounded(double mm) {
    return BigDecimal.valueOf(mm).setScale(3, RoundingMode.HALF_UP).doubleValue();
  }

  static String number(double mm) {
    BigDecimal rounded = BigDecimal.valueOf(mm).setScale(3, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
