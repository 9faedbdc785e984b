package org.comparanda.demo;

/** A length as a caliper reading with one decimal. */
final class Tenths {
  private Tenths() {}

  static String text(double mm) {
    long tenths = (long) StrictMath.floor(mm * 10 + 0.5);
    return tenths / 10 + "." + tenths % 10;
  }
}
