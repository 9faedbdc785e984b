package org.comparanda.gui.capture;

import java.util.List;
import javafx.scene.Node;

/** Style classes of a node that is used again; nothing is restyled where nothing changed. */
public final class Styled {
  private Styled() {}

  /** Gives the node exactly these style classes. */
  public static void as(Node node, String... styles) {
    List<String> now = List.of(styles);
    if (!node.getStyleClass().equals(now)) {
      node.getStyleClass().setAll(now);
    }
  }
}
