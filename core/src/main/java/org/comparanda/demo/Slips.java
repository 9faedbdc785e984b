package org.comparanda.demo;

/** Slips of the hand when a number is typed. */
final class Slips {
  private Slips() {}

  /** The first two neighbouring digits that differ, swapped; the same text when there are none. */
  static String firstDigitsSwapped(String number) {
    for (int i = 0; i + 1 < number.length(); i++) {
      char first = number.charAt(i);
      char second = number.charAt(i + 1);
      if (Character.isDigit(first) && Character.isDigit(second) && first != second) {
        return number.substring(0, i) + second + first + number.substring(i + 2);
      }
    }
    return number;
  }
}
