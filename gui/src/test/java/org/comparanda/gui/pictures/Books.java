package org.comparanda.gui.pictures;

import javafx.scene.Scene;
import javafx.scene.control.TextField;

/** States of the Day Book and of House Rules, in the room of {@link LookedRoom}. */
final class Books {
  private Books() {}

  static void filled(Scene scene) {
    Hand hand = new Hand(scene);
    hand.choose("kind", "call", "Bestimmung");
    hand.select("entries", 4);
  }

  static void proved(Scene scene) {
    TextField head = (TextField) scene.lookup("#head");
    new Hand(scene).type("proof-head", head.getText());
  }

  /** A rule about to be set anew. */
  static void rule(Scene scene) {
    Hand hand = new Hand(scene);
    hand.choose("me", "Invented Ann");
    hand.select("rules", 1);
    hand.lay();
    hand.fill("rule-value", "5");
    hand.fill("rule-why", "half of the heap was seen twice by now");
  }

  /** A head of another collection. */
  static void notProved(Scene scene) {
    Hand hand = new Hand(scene);
    hand.choose("by", "Invented Ben");
    hand.type("proof-head", "0123456789abcdef".repeat(4));
  }
}
