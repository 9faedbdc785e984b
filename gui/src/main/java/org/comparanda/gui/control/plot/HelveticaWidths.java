package org.comparanda.gui.control.plot;

import java.util.List;

/**
 * Advance widths of Helvetica, one of the 14 fonts that every PDF reader has, in thousandths of the
 * size, for the characters from blank to tilde. Bold is taken as 5 % wider, which is near enough
 * for centring. Source: the font's published metrics, from memory.
 */
final class HelveticaWidths {
  private static final int FIRST = ' ';
  private static final int DIGIT = 556;
  private static final List<Integer> WIDTHS =
      List.of(
          278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556,
          556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722,
          722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722,
          667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556,
          556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500,
          500, 334, 260, 334, 584);

  private HelveticaWidths() {}

  static double of(String text, Lettering lettering) {
    int sum = text.chars().map(HelveticaWidths::width).sum();
    double stretch = lettering.face() == Lettering.Face.BOLD ? 1.05 : 1;
    return sum / 1000.0 * lettering.size() * stretch;
  }

  private static int width(int character) {
    int index = character - FIRST;
    if (character == '\u00A0') {
      return WIDTHS.get(0);
    }
    return index >= 0 && index < WIDTHS.size() ? WIDTHS.get(index) : DIGIT;
  }
}
