package org.comparanda.gui.sizedesk;

import java.math.BigDecimal;
import java.util.Locale;
import org.comparanda.gui.text.Numbers;
import org.comparanda.sizeestimate.HonestDigits;

/**
 * The unit in which a quantity is shown: metres from 1000 mm, kilograms from 1000 g.
 *
 * @param symbol as written after the number, may be empty
 * @param inOne how many of the quantity's own units make one
 */
record ShownUnit(String symbol, double inOne) {
  /** For values around a typical one, in the quantity's own unit. */
  static ShownUnit of(String unit, double typical) {
    if (unit.equals("mm") && typical >= 1000) {
      return new ShownUnit("m", 1000);
    }
    if (unit.equals("g") && typical >= 1000) {
      return new ShownUnit("kg", 1000);
    }
    return new ShownUnit(unit, 1);
  }

  /** The unit as it stands after a number, with the blank before it; nothing for a plain number. */
  String after() {
    return symbol.isEmpty() ? "" : " " + symbol;
  }

  /** A value in this unit. */
  double of(double own) {
    return own / inOne;
  }

  /** {@code name (unit)}, for an axis. */
  String axis(String name) {
    return symbol.isEmpty() ? name : name + " (" + symbol + ")";
  }

  /** A number with the digits that the limits leave standing, without the unit. */
  String honest(double own, double lower, double upper, Locale locale) {
    String plain = HonestDigits.of(of(lower), of(upper)).text(of(own));
    int point = plain.indexOf('.');
    int decimals = point < 0 ? 0 : plain.length() - point - 1;
    return new Numbers(locale).fixed(new BigDecimal(plain).doubleValue(), decimals);
  }

  /** A measured value, to three significant digits or all whole ones, with the unit. */
  String measured(double own, Locale locale) {
    double value = of(own);
    int decimals = value >= 100 ? 0 : value >= 10 ? 1 : 2;
    return (new Numbers(locale).fixed(value, decimals) + " " + symbol).strip();
  }
}
