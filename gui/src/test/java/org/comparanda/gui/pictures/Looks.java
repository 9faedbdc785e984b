package org.comparanda.gui.pictures;

import javafx.scene.Scene;

/** States of the Second Look, in the room of {@link LookedRoom}. */
final class Looks {
  private Looks() {}

  static void queue(Scene scene) {
    new Hand(scene).choose("me", "Invented Ben");
  }

  static void blind(Scene scene) {
    queue(scene);
    Hand hand = new Hand(scene);
    hand.select("picked", 0);
    hand.lay();
    hand.choose("eye-element", "radius", "Radius", "Speiche");
    hand.choose("eye-side", "left", "links");
    hand.choose("eye-portion", "lower end", "unteres Ende");
    hand.lay();
    hand.fill("call-name", "Ovis cf. aries");
    hand.fill("call-basis", "groove beside the joint, against drawer C 5");
  }

  static void both(Scene scene) {
    queue(scene);
    Hand hand = new Hand(scene);
    hand.select("looked", 2);
    hand.lay();
    hand.fill("call-name", "Caprini indet.");
  }

  static void agreement(Scene scene) {
    queue(scene);
    new Hand(scene).press("page-agreement");
  }
}
