package org.comparanda.gui.control.plot;

import java.util.HashMap;
import java.util.Map;
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

  /** The same widths, each measured once. For one thread. */
  static TextWidth kept(TextWidth other) {
    record Written(String text, Lettering lettering) {}
    Map<Written, Double> known = new HashMap<>();
    return (text, lettering) ->
        known.computeIfAbsent(new Written(text, lettering), w -> other.of(w.text(), w.lettering()));
  }

  /** In vectors for print, whose letters are Helvetica. */
  static TextWidth inPrint() {
    return HelveticaWidths::of;
  }
}
