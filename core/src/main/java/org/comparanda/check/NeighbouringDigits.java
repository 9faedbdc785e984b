package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;

/**
 * The numbers that come of swapping two neighbouring digits of a typed number, a zero in front that
 * the number no longer shows included (036.5 for 306.5).
 */
final class NeighbouringDigits {
  private NeighbouringDigits() {}

  /** Without those that begin with zero: nobody types them; the decimal mark is passed over. */
  static List<Double> swapped(double mm) {
    String text = "0" + Millimetres.number(mm);
    List<Double> numbers = new ArrayList<>();
    List<Integer> digits = new ArrayList<>();
    for (int i = 0; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        digits.add(i);
      }
    }
    for (int d = 0; d + 1 < digits.size(); d++) {
      int i = digits.get(d);
      int j = digits.get(d + 1);
      StringBuilder other = new StringBuilder(text);
      other.setCharAt(i, text.charAt(j));
      other.setCharAt(j, text.charAt(i));
      if (text.charAt(i) != text.charAt(j) && other.charAt(d == 0 ? 0 : 1) != '0') {
        numbers.add(Double.parseDouble(other.toString()));
      }
    }
    return numbers;
  }
}
