package org.comparanda.exchange.table;

import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;

/** Numbers as people type them, read whole or not at all. */
final class NumberText {
  private static final Pattern POINT =
      Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");
  private static final Pattern COMMA = Pattern.compile("[+-]?(\\d+(,\\d*)?|,\\d+)([eE][+-]?\\d+)?");
  private static final Set<String> MISSING = Set.of("", "NA", "-");

  private NumberText() {}

  /** Whether a cell says that there is no value. */
  static boolean missing(String cell) {
    return MISSING.contains(cell);
  }

  /** The number, or empty if the text is none or is too large to be one. */
  static OptionalDouble read(String cell, DecimalMark mark) {
    Pattern form = mark == DecimalMark.POINT ? POINT : COMMA;
    if (!form.matcher(cell).matches()) {
      return OptionalDouble.empty();
    }
    double value = Double.parseDouble(cell.replace(',', '.'));
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
