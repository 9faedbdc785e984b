package org.comparanda.demo;

/** A number as it would be typed, the same on every Java. */
final class TypedNumber {
  private TypedNumber() {}

  /** One decimal, as the caliper shows mm. */
  static String tenths(double value) {
    long tenths = (long) StrictMath.floor(value * 10 + 0.5);
    return tenths / 10 + "." + tenths % 10;
  }

  /** Three decimals, as the caliper shows inches. */
  static String thousandths(double value) {
    long thousandths = (long) StrictMath.floor(value * 1000 + 0.5);
    return thousandths / 1000 + "." + String.valueOf(1000 + thousandths % 1000).substring(1);
  }
}
