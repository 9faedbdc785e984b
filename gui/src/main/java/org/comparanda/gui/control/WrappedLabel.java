package org.comparanda.gui.control;

import javafx.scene.control.Label;

/** A text that may run over several lines and is never cut. */
public final class WrappedLabel extends Label {
  /** A text, with its style classes if any. */
  public WrappedLabel(String text, String... styles) {
    super(text);
    getStyleClass().addAll(styles);
    setWrapText(true);
    setMinHeight(USE_PREF_SIZE);
  }
}
