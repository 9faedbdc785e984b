package org.comparanda.gui.control;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.util.Duration;

/** In-place help: what a word of the screen means, on hover and on F1 while it has the focus. */
public final class Term {
  private static final double WIDTH = 360;

  private Term() {}

  /**
   * Explains a control.
   *
   * @param definition one or two sentences
   */
  public static void explain(Node node, String definition) {
    Tooltip help = new Tooltip(definition);
    help.setWrapText(true);
    help.setPrefWidth(WIDTH);
    help.setShowDuration(Duration.INDEFINITE);
    Tooltip.install(node, help);
    node.setAccessibleHelp(definition);
    node.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.F1) {
            event.consume();
            Bounds place = node.localToScreen(node.getBoundsInLocal());
            help.show(node, place.getMinX(), place.getMaxY());
          } else if (help.isShowing()) {
            help.hide();
          }
        });
    node.focusedProperty().addListener((o, was, is) -> help.hide());
  }
}
