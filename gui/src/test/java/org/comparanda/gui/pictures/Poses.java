package org.comparanda.gui.pictures;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;

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
        new Pose("bench", "forty-taxa", Pose.Shelf.MANY, scene -> bone(scene, "Hard", "K-207")),
        new Pose("bench", "state-first", scene -> bone(scene, "Messy", "K-308")),
        new Pose("bench", "reasons", Poses::reasons),
        new Pose("bench", "which-bone", Poses::whichBone),
        new Pose("bench", "definition", Poses::definition),
        new Pose("bench", "stop", Poses::stop),
        new Pose("tray", "bone-by-eye", Poses::trayBone),
        new Pose("tray", "found", Poses::trayFound),
        new Pose("tray", "counts", Poses::trayCounts),
        new Pose("bench", "hint", scene -> bone(scene, "Hard", "K-207")),
        new Pose("bench", "batch", Poses::batch),
        new Pose("bench", "pieces", Poses::pieces),
        new Pose("bench", "caliper", Poses::caliper),
        new Pose("bench", "pictures", Poses::photos),
        new Pose("welcome", "who", scene -> {}),
        new Pose("welcome", "collection", Poses::named),
        new Pose("welcome", "caliper", Poses::doorOpened),
        new Pose("shelf", "animal", ShelfPoses::animal),
        new Pose("shelf", "import-refused", ShelfPoses::importRefused),
        new Pose("shelf", "card", ShelfPoses::card),
        new Pose("shelf", "findings", ShelfPoses::findings),
        new Pose("shelf", "stock", scene -> new Hand(scene).press("page-stock")),
        new Pose("shelf", "skeleton", ShelfPoses::skeleton),
        new Pose("bench", "keys", Poses::keys),
        new Pose("bench", "words", Poses::words),
        new Pose("shelf", "skeleton-state", ShelfPoses::boneState),
        new Pose("shelf", "skeleton-move", ShelfPoses::boneMove),
        new Pose("shelf", "names", ShelfPoses::names),
        new Pose("shelf", "wanted", scene -> new Hand(scene).press("page-wanted")),
        new Pose("sizedesk", "slender-snout", SizeDeskPoses::slenderSnout),
        new Pose("sizedesk", "diagnostics", SizeDeskPoses::diagnostics),
        new Pose("sizedesk", "more", SizeDeskPoses::more),
        new Pose("sizedesk", "several-bones", SizeDeskPoses::severalBones),
        new Pose("sizedesk", "tree", SizeDeskPoses::tree),
        new Pose("sizedesk", "equations", SizeDeskPoses::equations),
        new Pose("sizedesk", "undecided", SizeDeskPoses::undecided),
        new Pose("sizedesk", "methods", SizeDeskPoses::methods),
        new Pose("shelf", "import-mapping", ShelfPoses::importMapping),
        new Pose("tray", "lot", Poses::lot),
        new Pose("tray", "hazards", Poses::hazards),
        new Pose("secondlook", "empty", scene -> {}),
        new Pose("secondlook", "queue", Pose.Shelf.LOOKED, Looks::queue),
        new Pose("secondlook", "blind-look", Pose.Shelf.LOOKED, Looks::blind),
        new Pose("secondlook", "both-shown", Pose.Shelf.LOOKED, Looks::both),
        new Pose("secondlook", "agreement", Pose.Shelf.LOOKED, Looks::agreement),
        new Pose("daybook", "filled", Pose.Shelf.LOOKED, Books::filled),
        new Pose("daybook", "proved", Pose.Shelf.LOOKED, Books::proved),
        new Pose("daybook", "not-proved", Pose.Shelf.LOOKED, Books::notProved),
        new Pose("houserules", "set", Pose.Shelf.LOOKED, Books::rule),
        new Pose("bench", "call-first", Pose.Shelf.LOOKED, scene -> bone(scene, "Hard", "K-202")),
        new Pose("oldcards", "marked", Poses::oldCards),
        new Pose("pile", "in-order", Poses::pile),
        new Pose("shelf", "skeleton-pieces", ShelfPoses::pieces),
        new Pose("shelf", "skeleton-aside", ShelfPoses::aside)); // last: the others see it, too
  }

  /** Invented cards: a plain one of a shape that others share is open. */
  private static void oldCards(Scene scene) {
    try {
      Path list = Files.createTempDirectory("pictures").resolve("old-list.txt");
      Files.writeString(
          list,
          """
          Ovis aries, humerus left dist., Bd 29.5 mm; site: Pit 4, north
          Reh, Oberschenkel li., GL=175,2 mm, verbrannt, Fundort Kellerwald
          Box 12: sheep humerus, somewhat worn, given by the miller
          goat humerus right dist., Bd 31.0 mm; site: Pit 4
          cf. Sus scrofa, tibia l., prox.
          sheep or goat, metacarpal and metatarsal, left
          3 pcs pig ribs
          horse phalanx II, GL 47 mm
          Capra hircus femur r.; site: under the stairs
          fox, mandible, 142 mm
          """);
      Hand hand = new Hand(scene);
      if (hand.isEmpty("cards")) {
        hand.bringCards(list);
      }
      hand.select("cards", 2);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Invented arrivals, one of them asked for. */
  private static void pile(Scene scene) {
    Hand hand = new Hand(scene);
    if (hand.isEmpty("arrivals")) {
      arrivals(hand);
    }
    hand.select("arrivals", 0);
  }

  private static void arrivals(Hand hand) {
    arrival(hand, "A-31", "Capra hircus", "a hill farm", "");
    arrival(hand, "A-32", "Rupicapra rupicapra", "a warden", "P 2026/14");
    arrival(hand, "A-33", "Meles meles", "a road", "P 2026/15");
    arrival(hand, "A-34", "Osteolaemus tetraspis", "a zoo", "P 2026/16");
    arrival(hand, "A-35", "Ovis aries", "a hill farm", "");
    hand.select("arrivals", 2);
    hand.fill("who", "anna");
    hand.fill("reason", "healed ribs, a thesis");
    hand.press("ask");
  }

  private static void arrival(Hand hand, String number, String taxon, String from, String permit) {
    hand.fill("number", number);
    hand.fill("new-taxon", taxon);
    hand.fill("from", from);
    hand.fill("permit", permit);
    hand.press("add");
  }

  /** A bone of the hard tray, called by eye against what the numbers say. */
  private static void trayBone(Scene scene) {
    Hand hand = new Hand(scene);
    hand.select("trays", 1);
    hand.select("bones", 1);
    scene.getRoot().applyCss();
    scene.getRoot().layout();
    hand.type("call-name", "Capra cf. hircus");
  }

  private static void trayFound(Scene scene) {
    Hand hand = new Hand(scene);
    hand.select("trays", 0);
    hand.type("find", "left femur");
  }

  private static void trayCounts(Scene scene) {
    Hand hand = new Hand(scene);
    hand.select("trays", 1);
    hand.press("page-counts");
  }

  private static void lot(Scene scene) {
    Hand hand = new Hand(scene);
    hand.select("trays", 3);
    hand.press("page-lot");
  }

  /** Recorded of the lot of the fossil tray, so that it stands before its first bone. */
  private static void hazards(Scene scene) {
    lot(scene);
    if (scene.lookup("#lot-hazards") instanceof TextInputControl field) {
      field.setText(
          "Old museum glue with arsenic (invented). Radioactive matrix: keep the lid on.");
      new Hand(scene).press("record-lot");
    }
  }

  private static void bone(Scene scene, String tray, String bone) {
    Hand hand = new Hand(scene);
    hand.choose("tray", tray);
    hand.choose("bone", bone);
  }

  private static void errand(Scene scene, String digit) {
    Hand hand = new Hand(scene);
    hand.press("more");
    hand.press("choice-" + digit);
  }

  private static void batch(Scene scene) {
    bone(scene, "Hard", "K-202");
    errand(scene, "1");
  }

  private static void pieces(Scene scene) {
    bone(scene, "Hard", "K-207");
    errand(scene, "4");
  }

  private static void caliper(Scene scene) {
    bone(scene, "Hard", "K-202");
    errand(scene, "8");
    new Hand(scene).press("choice-1"); // a new one, where the room has none
  }

  private static void photos(Scene scene) {
    bone(scene, "Hard", "K-202");
    new Hand(scene).press("photos-chip");
  }

  private static void named(Scene scene) {
    new Hand(scene).type("welcome-name", "Invented Volunteer");
  }

  private static void doorOpened(Scene scene) {
    named(scene);
    scene.getRoot().applyCss();
    scene.getRoot().layout();
    new Hand(scene).press("welcome-demo");
  }

  private static void reasons(Scene scene) {
    bone(scene, "Hard", "K-202");
    new Hand(scene).press("why");
  }

  private static void whichBone(Scene scene) {
    bone(scene, "Hard", "K-207");
    new Hand(scene).press("which");
  }

  private static void definition(Scene scene) {
    bone(scene, "Hard", "K-207");
    new Hand(scene).key("reading", KeyCode.F1);
  }

  private static void keys(Scene scene) {
    bone(scene, "Hard", "K-202");
    Hand hand = new Hand(scene);
    hand.key("reading", KeyCode.ESCAPE);
    hand.read("09");
  }

  /** What the words of the open screen mean. */
  private static void words(Scene scene) {
    bone(scene, "Hard", "K-202");
    new Hand(scene).press("words");
  }

  private static void stop(Scene scene) {
    bone(scene, "Hard", "K-201");
    Hand hand = new Hand(scene);
    hand.press("stop");
    hand.press("stop-yes");
  }
}
