package org.comparanda.gui.sizedesk;

import javafx.scene.Node;

/** What a page does when it comes into the window and when it goes. */
final class Pages {
  private Pages() {}

  static void follow(Node page, Runnable comes, Runnable goes) {
    page.parentProperty().addListener((o, was, is) -> (is == null ? goes : comes).run());
  }
}
