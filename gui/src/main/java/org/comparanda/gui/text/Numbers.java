package org.comparanda.gui.text;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Numbers as the person writes them. */
public record Numbers(Locale locale) {
  /** With exactly so many decimals, without grouping. */
  public String fixed(double value, int decimals) {
    DecimalFormat format =
        new DecimalFormat(
            decimals == 0 ? "0" : "0." + "0".repeat(decimals),
            DecimalFormatSymbols.getInstance(locale));
    return format.format(value);
  }

  /** With up to so many decimals, without grouping. */
  public String upTo(double value, int decimals) {
    DecimalFormat format =
        new DecimalFormat(
            decimals == 0 ? "0" : "0." + "#".repeat(decimals),
            DecimalFormatSymbols.getInstance(locale));
    return format.format(value);
  }

  /** A share or typicality: two decimals, "< 0.01" where that would round to nothing. */
  public String chance(double value) {
    return value < 0.005 && value > 0 ? "< " + fixed(0.01, 2) : fixed(value, 2);
  }

  /** A number written with a point, in the person's notation. */
  public String written(String plain) {
    char mark = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
    return plain.replace('.', mark);
  }
}
