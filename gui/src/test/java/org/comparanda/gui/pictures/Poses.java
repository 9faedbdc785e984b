package org.comparanda.gui.pictures;

import java.util.List;
import javafx.scene.Scene;

/** The states of the screens that docs/pictures shows. */
final class Poses {
  private Poses() {}

  static List<Pose> all() {
    return List.of(
        new Pose("sizedesk", "slender-snout", Poses::slenderSnout),
        new Pose("sizedesk", "diagnostics", Poses::diagnostics),
        new Pose("sizedesk", "methods", Poses::methods));
  }

  /** A gharial of the shelf, recorded as 3.66 m long, put on the line of broad-snouted jaws. */
  private static void slenderSnout(Scene scene) {
    Hand hand = new Hand(scene);
    hand.choose("from", "Mandible ML");
    hand.untick("taxa", entry -> entry.contains("Gavialis"));
    hand.choose("beside", "all taxa");
    hand.type("own", "HB-0252");
  }

  private static void diagnostics(Scene scene) {
    slenderSnout(scene);
    new Hand(scene).press("page-diagnostics");
  }

  private static void methods(Scene scene) {
    slenderSnout(scene);
    new Hand(scene).press("page-methods");
  }
}
