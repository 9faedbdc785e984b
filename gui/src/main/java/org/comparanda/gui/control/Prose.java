package org.comparanda.gui.control;

import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** A box for several lines of text, which Tab and Shift+Tab leave as they leave any other field. */
public final class Prose extends TextArea {
  public Prose() {
    setWrapText(true);
    addEventFilter(KeyEvent.KEY_PRESSED, this::leave);
  }

  /** The box beneath goes on by Ctrl+Tab and takes Tab for a character. */
  private void leave(KeyEvent event) {
    if (event.getCode() == KeyCode.TAB && !event.isControlDown()) {
      event.consume();
      fireEvent(
          new KeyEvent(
              KeyEvent.KEY_PRESSED,
              "",
              "",
              KeyCode.TAB,
              event.isShiftDown(),
              true,
              event.isAltDown(),
              event.isMetaDown()));
    }
  }
}
