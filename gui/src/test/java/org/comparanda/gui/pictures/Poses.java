package org.comparanda.gui.pictures;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Scene;

/** The states of the screens that docs/pictures shows. */
final class Poses {
  private Poses() {}

  static List<Pose> all() {
    return List.of(
        new Pose("bench", "empty", scene -> {}),
        new Pose("bench", "fits-one", scene -> bone(scene, "Easy", "K-101")),
        new Pose("bench", "look-alikes", scene -> bone(scene, "Hard", "K-202")),
        new Pose("bench", "nothing-fits", scene -> bone(scene, "Hard", "K-206")),
        new Pose("bench", "young-bone", scene -> bone(scene, "Hard", "K-205")),
        new Pose("bench", "one-reading", scene -> bone(scene, "Hard", "K-207")),
        new Pose("bench", "shelf-too-thin", Pose.Shelf.THIN, scene -> bone(scene, "Hard", "K-202")),
        new Pose("bench", "state-first", scene -> bone(scene, "Messy", "K-308")),
        new Pose("bench", "reasons", Poses::reasons),
        new Pose("bench", "stop", Poses::stop),
        new Pose("shelf", "animal", Poses::animal),
        new Pose("shelf", "import-refused", Poses::importRefused),
        new Pose("sizedesk", "slender-snout", Poses::slenderSnout),
        new Pose("sizedesk", "diagnostics", Poses::diagnostics),
        new Pose("sizedesk", "methods", Poses::methods));
  }

  private static void animal(Scene scene) {
    new Hand(scene).select("animals", 3);
  }

  /** A table with a letter in a number, an unknown element, and an animal that is there already. */
  private static void importRefused(Scene scene) {
    try {
      Path table = Files.createTempDirectory("pictures").resolve("new-skeletons.csv");
      Files.writeString(
          table,
          """
          animal,taxon,element,side,drawer,GL [mm],SD [mm],Bd [mm]
          HB-0901,Ovis aries,humerus,left,C 5,15o.2,15.1,31.0
          HB-0902,Ovis aries,humerus,links,C 5,152.6,15.4,31.6
          HB-0101,Ovis aries,femur,left,C 5,171.0,15.9,35.4
          HB-0903,Ovis ariez,wing,left,C 5,149.7,14.8,30.1
          """);
      new Hand(scene).importTable(table);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void bone(Scene scene, String tray, String bone) {
    Hand hand = new Hand(scene);
    hand.choose("tray", tray);
    hand.choose("bone", bone);
  }

  private static void reasons(Scene scene) {
    bone(scene, "Hard", "K-202");
    new Hand(scene).press("why");
  }

  private static void stop(Scene scene) {
    bone(scene, "Hard", "K-201");
    Hand hand = new Hand(scene);
    hand.press("stop");
    hand.press("stop-yes");
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
