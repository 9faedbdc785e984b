package org.comparanda.gui.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import org.comparanda.capture.Errand;

/**
 * What a key opens over a screen or in it: questions, lists, refusals, warnings. They are looked at
 * as the poses are; docs/pictures does not show them.
 */
final class Keyed {
  private Keyed() {}

  static List<Pose> all() {
    List<Pose> all = new ArrayList<>();
    all.add(new Pose("bench", "list-of-errands", scene -> read(scene, "0")));
    for (Errand errand : Errand.values()) {
      String number = "0" + errand.number();
      all.add(new Pose("bench", "errand-" + errand.number(), scene -> read(scene, number)));
    }
    all.add(new Pose("bench", "why-not", scene -> typed(scene, "-")));
    all.add(new Pose("bench", "warning", scene -> read(scene, "1502")));
    all.add(new Pose("bench", "refusal", scene -> read(scene, "1.5.2")));
    all.add(new Pose("bench", "which-bone-by-key", scene -> key(scene, KeyCode.F4)));
    all.add(new Pose("bench", "reasons-by-key", scene -> key(scene, KeyCode.F2)));
    all.add(new Pose("bench", "all-keys-by-key", scene -> key(scene, KeyCode.F1, KeyCode.SHIFT)));
    all.add(new Pose("bench", "stop-question", Keyed::stopQuestion));
    all.add(new Pose("bench", "hazards", scene -> new Hand(scene).choose("tray", "Fossil")));
    all.add(new Pose("bench", "list-of-taxa", scene -> list(scene, "taxon")));
    all.add(new Pose("bench", "list-of-bases", scene -> list(scene, "basis")));
    all.add(new Pose("bench", "list-of-qualifiers", scene -> list(scene, "qualifier")));
    all.add(new Pose("bench", "call-without-taxon", scene -> bone(scene).press("record")));
    all.add(new Pose("tray", "stopped", Keyed::trayStopped));
    all.add(new Pose("tray", "nothing-found", scene -> new Hand(scene).type("find", "qqq")));
    all.add(new Pose("shelf", "retired", Keyed::retired));
    all.add(new Pose("shelf", "merged", Keyed::merged));
    return List.copyOf(all);
  }

  private static Hand bone(Scene scene) {
    Hand hand = new Hand(scene);
    hand.choose("tray", "Hard", "Schwierig");
    hand.choose("bone", "K-203");
    hand.lay();
    return hand;
  }

  private static void read(Scene scene, String text) {
    bone(scene).read(text);
  }

  private static void typed(Scene scene, String text) {
    Hand hand = bone(scene);
    hand.typed(text);
    hand.lay();
  }

  private static void key(Scene scene, KeyCode key, KeyCode... held) {
    Hand hand = bone(scene);
    hand.key("reading", key, Set.of(held));
    hand.lay();
  }

  private static void stopQuestion(Scene scene) {
    key(scene, KeyCode.H, KeyCode.CONTROL, KeyCode.SHIFT);
  }

  private static void list(Scene scene, String box) {
    Hand hand = bone(scene);
    hand.open(box);
    hand.lay();
  }

  private static void trayStopped(Scene scene) {
    Hand hand = new Hand(scene);
    hand.select("trays", 1);
    hand.select("bones", 3);
    hand.lay();
    hand.press("tray-stop");
  }

  private static void retired(Scene scene) {
    ShelfPoses.card(scene);
    new Hand(scene).press("card-retire");
  }

  private static void merged(Scene scene) {
    ShelfPoses.card(scene);
    Hand hand = new Hand(scene);
    hand.type("double-number", "HB-0102");
    hand.press("double-look");
  }
}
