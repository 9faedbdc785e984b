package org.comparanda.gui.control;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/**
 * A scroll pane that can't be seen: no ground or edge of its own, its content as wide as itself. It
 * keeps no image of what it shows: what changes with every reading would be painted twice.
 */
public final class PlainScroll extends ScrollPane {
  public PlainScroll(Node content) {
    super(content);
    getStyleClass().add("plain-scroll");
    setFitToWidth(true);
    skinProperty().addListener((o, was, is) -> keepNoImage());
  }

  private void keepNoImage() {
    lookupAll(".viewport").forEach(viewport -> viewport.setCache(false));
  }
}
