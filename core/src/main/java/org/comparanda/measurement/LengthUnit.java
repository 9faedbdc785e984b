package org.comparanda.measurement;

import java.util.Arrays;
import java.util.Optional;

/** Units in which a length may be typed; everything is kept in millimetres. */
public enum LengthUnit {
  MILLIMETRE("mm", 1.0),
  CENTIMETRE("cm", 10.0),
  METRE("m", 1000.0),
  INCH("in", 25.4);

  private final String symbol;
  private final double millimetres;

  LengthUnit(String symbol, double millimetres) {
    this.symbol = symbol;
    this.millimetres = millimetres;
  }

  /** The symbol as typed: mm, cm, m, in. */
  public String symbol() {
    return symbol;
  }

  /** How many millimetres one unit is (the inch is 25.4 mm exactly). */
  public double millimetres() {
    return millimetres;
  }

  /** The unit with that symbol. */
  public static Optional<LengthUnit> ofSymbol(String text) {
    return Arrays.stream(values()).filter(u -> u.symbol.equals(text)).findFirst();
  }
}
