package org.comparanda.gui.control.plot;

import javafx.scene.text.Text;

/** Width of a text on the medium in use. */
public interface TextWidth {
  double of(String text, Lettering lettering);

  /** On the screen and in PNG, in that family of letters. */
  static TextWidth onScreen(String family) {
    return (words, lettering) -> {
      Text text = new Text(words);
      text.setFont(CanvasPen.font(family, lettering));
      return text.getLayoutBounds().getWidth();
    };
  }

  /** In vectors for print, whose letters are Helvetica. */
  static TextWidth inPrint() {
    return HelveticaWidths::of;
  }
}
