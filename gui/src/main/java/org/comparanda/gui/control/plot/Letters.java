package org.comparanda.gui.control.plot;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Numbers as tick labels, and the room that letters take. */
public final class Letters {
  private Letters() {}

  /** A number as a language writes it, without trailing zeros, thousands apart from 10 000 on. */
  public static String number(double value, Locale language) {
    String plain = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    int point = plain.indexOf('.');
    String whole = point < 0 ? plain : plain.substring(0, point);
    String rest = point < 0 ? "" : plain.substring(point);
    if (Math.abs(value) >= 10_000) {
      whole = whole.replaceAll("(?<=\\d)(?=(\\d{3})+$)", "\u00A0");
    }
    char mark = DecimalFormatSymbols.getInstance(language).getDecimalSeparator();
    return whole.replace('-', '\u2212') + rest.replace('.', mark);
  }

  /**
   * Room for a text, on the safe side: pens do not share a font, so 0.6 of the size per letter, the
   * mean of a wide screen font.
   */
  static double width(String text, double size) {
    return 0.6 * size * text.length();
  }
}
