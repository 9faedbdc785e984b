package org.comparanda.sizeestimate;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Rounds an estimate to the digits that its interval leaves standing: two digits of the interval's
 * half width. The short end of a lopsided interval keeps two digits of its own, up to two places
 * more. Common practice, no source.
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
    int own = value == 0 ? place : (int) Math.floor(Math.log10(Math.abs(value))) - 1;
    int at = Math.max(Math.min(place, own), place - 2);
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(-at, RoundingMode.HALF_UP);
    return rounded.setScale(Math.max(0, -at), RoundingMode.UNNECESSARY).toPlainString();
  }
}
