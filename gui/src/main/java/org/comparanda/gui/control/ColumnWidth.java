package org.comparanda.gui.control;

import javafx.beans.value.ObservableValue;
import javafx.scene.text.Font;

/** Widths of table columns that grow with the size of the text. */
public final class ColumnWidth {
  private static final double TEXT_PX = 13; // the text at 100 %

  private ColumnWidth() {}

  /**
   * The width of a column.
   *
   * @param font of a control with text of the ordinary size
   * @param atFullSize width at 100 %, pixels
   */
  public static ObservableValue<Double> of(ObservableValue<Font> font, double atFullSize) {
    return font.map(f -> atFullSize * f.getSize() / TEXT_PX);
  }
}
