package org.comparanda.gui.control.plot;

/**
 * Colours of a drawing that do not belong to a kind.
 *
 * @param ground behind everything
 * @param ink axes, outlines, lines
 * @param muted small print and tick labels
 * @param hair grid lines
 * @param accent the bone in hand and nothing else
 * @param shade which of a kind's two fills is taken
 */
public record Palette(Tint ground, Tint ink, Tint muted, Tint hair, Tint accent, Shade shade) {
  /** Light or dark ground. */
  public enum Shade {
    LIGHT,
    DARK
  }

  public static final Palette LIGHT =
      new Palette(
          Tint.of(0xFFFFFF),
          Tint.of(0x23272C),
          Tint.of(0x5A5F67),
          Tint.of(0xEBE7DF),
          Tint.of(0xA63D17),
          Shade.LIGHT);
  public static final Palette DARK =
      new Palette(
          Tint.of(0x25282C),
          Tint.of(0xECE8DF),
          Tint.of(0xA2A7AE),
          Tint.of(0x2F3339),
          Tint.of(0xFF9A6B),
          Shade.DARK);

  /** The palette that can be read on a ground of that brightness, 0 (black) to 1 (white). */
  public static Palette onGround(double brightness) {
    return brightness < 0.5 ? DARK : LIGHT;
  }

  Tint fillOf(Series series) {
    return shade == Shade.LIGHT ? series.light() : series.dark();
  }

  /** The fill of a kind. */
  public Tint fillOf(KindLook look) {
    return shade == Shade.LIGHT ? look.light() : look.dark();
  }
}
