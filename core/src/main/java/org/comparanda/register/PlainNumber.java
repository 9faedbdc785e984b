package org.comparanda.register;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as a keeper types them; a comma before three digits is refused, it could be either. */
final class PlainNumber {
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}([.,][0-9]{1,9})?");
  private static final Pattern EITHER = Pattern.compile("[0-9]{1,3},[0-9]{3}");

  private PlainNumber() {}

  static String text(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** A number above zero. */
  static Optional<Double> read(String text) {
    if (!NUMBER.matcher(text).matches() || EITHER.matcher(text).matches()) {
      return Optional.empty();
    }
    double value = Double.parseDouble(text.replace(',', '.'));
    return value > 0 ? Optional.of(value) : Optional.empty();
  }
}
