package org.comparanda.sizeestimate;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Rounds an estimate to the digits that its interval leaves standing: two digits of the interval's
 * half width. Common practice, no source.
 */
public final class HonestDigits {
  private final int place;

  private HonestDigits(int place) {
    this.place = place;
  }

  /** The digits that an interval with these limits leaves. */
  public static HonestDigits of(double lower, double upper) {
    double half = Math.abs(upper - lower) / 2;
    return new HonestDigits(half > 0 ? (int) Math.floor(Math.log10(half)) - 1 : -6);
  }

  /** A number rounded to that place, without an exponent. */
  public String text(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(-place, RoundingMode.HALF_UP);
    return rounded.setScale(Math.max(0, -place), RoundingMode.UNNECESSARY).toPlainString();
  }
}
