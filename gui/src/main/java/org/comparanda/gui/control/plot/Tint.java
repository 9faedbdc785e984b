package org.comparanda.gui.control.plot;

import java.util.Locale;

/**
 * A colour with its opacity.
 *
 * @param rgb {@code 0xRRGGBB}
 * @param alpha 0 (not there) to 1 (solid)
 */
public record Tint(int rgb, double alpha) {
  /** A solid colour. */
  public static Tint of(int rgb) {
    return new Tint(rgb, 1);
  }

  /** The same colour, more or less see-through. */
  public Tint withAlpha(double other) {
    return new Tint(rgb, other);
  }

  double red() {
    return (rgb >> 16 & 0xFF) / 255.0;
  }

  double green() {
    return (rgb >> 8 & 0xFF) / 255.0;
  }

  double blue() {
    return (rgb & 0xFF) / 255.0;
  }

  /** {@code #RRGGBB}, the opacity left out. */
  public String hex() {
    return String.format(Locale.ROOT, "#%06X", rgb);
  }
}
