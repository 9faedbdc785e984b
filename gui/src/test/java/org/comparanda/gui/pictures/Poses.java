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
        new Pose("shelf", "animal", Poses::animal),
        new Pose("shelf", "import-refused", Poses::importRefused),
        new Pose("shelf", "card", Poses::card),
        new Pose("shelf", "findings", scene -> new Hand(scene).press("page-findings")),
        new Pose("shelf", "stock", scene -> new Hand(scene).press("page-stock")),
        new Pose("shelf", "skeleton", Poses::skeleton),
        new Pose("bench", "keys", Poses::keys),
        new Pose("bench", "words", Poses::words),
        new Pose("shelf", "skeleton-state", Poses::boneState),
        new Pose("shelf", "skeleton-move", Poses::boneMove),
        new Pose("shelf", "names", Poses::names),
        new Pose("shelf", "wanted", scene -> new Hand(scene).press("page-wanted")),
        new Pose("sizedesk", "slender-snout", Poses::slenderSnout),
        new Pose("sizedesk", "diagnostics", Poses::diagnostics),
        new Pose("sizedesk", "more", Poses::more),
        new Pose("sizedesk", "several-bones", Poses::severalBones),
        new Pose("sizedesk", "tree", Poses::tree),
        new Pose("sizedesk", "equations", Poses::equations),
        new Pose("sizedesk", "undecided", Poses::undecided),
        new Pose("sizedesk", "methods", Poses::methods),
        new Pose("shelf", "import-mapping", Poses::importMapping),
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
        new Pose("pile", "in-order", Poses::pile));
  }

  /** An invented table of a house with words of its own, under a title. */
  private static void importMapping(Scene scene) {
    try {
      Path table = Files.createTempDirectory("pictures").resolve("house-list.csv");
      Files.writeString(
          table,
          """
          Our sheep, goats and cattle (invented)

          Specimen;Species;Skelettelement;Seite;GL_mm;Bd (cm);Dachbreite;Observer
          H-1;Ovis aries;humerus;left;150,2;3,1;12,4;K
          H-2;Ovis aries;humerus;right;150,9;3,1;12,6;K
          H-3;Capra hircus;humerus;left;148,1;3,0;11,9;L
          H-4;Capra hircus;femur;left;171,0;3,5;;L
          H-5;Bos taurus;femur;right;365,5;9,1;;K
          """);
      new Hand(scene).importTable(table);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
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

  private static void animal(Scene scene) {
    new Hand(scene).select("animals", 3);
  }

  /** The heel bones of a sheep, the right one a tenth broader than the left. */
  private static void skeleton(Scene scene) {
    heelBones(scene);
    new Hand(scene).typed("21.5");
  }

  private static void heelBones(Scene scene) {
    animal(scene);
    Hand hand = new Hand(scene);
    hand.press("open-skeleton");
    hand.type("skeleton-who", "demo");
    hand.press("element-calcaneus");
    if (scene.lookup("#state-keys") != null) {
      hand.press("state-keys");
      hand.read("54.8");
      hand.press("state-keys");
      hand.read("54.6");
      hand.read("19.2");
    }
    hand.key("reading", KeyCode.ESCAPE);
  }

  /** A heel bone that was registered as the wrong side. */
  private static void boneMove(Scene scene) {
    heelBones(scene);
    Hand hand = new Hand(scene);
    hand.press("skeleton-move");
    hand.fill("skeleton-why", "sides taken for each other");
  }

  /** The state of the first femur is asked. */
  private static void boneState(Scene scene) {
    animal(scene);
    Hand hand = new Hand(scene);
    hand.press("open-skeleton");
    hand.type("skeleton-who", "demo");
    hand.press("element-femur");
  }

  private static void names(Scene scene) {
    Hand hand = new Hand(scene);
    hand.press("page-taxa");
    scene.getRoot().applyCss();
    scene.getRoot().layout();
    hand.select("taxa", 5);
  }

  /** A card with an invented permit, a day that is none, and what its double would give it. */
  private static void card(Scene scene) {
    animal(scene);
    Hand hand = new Hand(scene);
    hand.press("open-card");
    scene.getRoot().applyCss();
    scene.getRoot().layout();
    hand.type("field-permit", "X 17/2 (invented)");
    hand.type("field-hand_over_by", "new year");
    hand.choose("field-export", "forbidden", "verboten");
    hand.type("who", "demo");
    hand.type("why", "permit found in the file");
    hand.press("card-save");
    hand.type("double-number", "HB-0105");
    hand.press("double-look");
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

  /** A gharial of the shelf, recorded as 3.66 m long, put on the line of broad-snouted jaws. */
  private static void slenderSnout(Scene scene) {
    Hand hand = new Hand(scene);
    hand.choose("from", "Mandible ML", "Unterkiefer ML");
    hand.untick("taxa", entry -> entry.contains("Gavialis"));
    hand.type("own", "HB-0252");
  }

  private static void diagnostics(Scene scene) {
    slenderSnout(scene);
    new Hand(scene).press("page-diagnostics");
  }

  /** The rest of what can be chosen, level and correction changed. */
  private static void more(Scene scene) {
    slenderSnout(scene);
    Hand hand = new Hand(scene);
    hand.press("more");
    hand.type("level", "90");
    hand.choose("correction", "smearing", "Residuenmittel");
  }

  /** A humerus and a femur of one find that can't be of one animal. */
  private static void severalBones(Scene scene) {
    Hand hand = new Hand(scene);
    hand.choose("predict", "Body mass", "Körpermasse");
    hand.choose("from", "Humerus SD", "Oberarmbein SD");
    hand.type("reading", "16.9");
    hand.press("further-add");
    hand.choose("further-0", "Femur SD", "Oberschenkelbein SD");
    hand.type("further-reading-0", "26");
  }

  /** A line across taxa on an invented tree, for a bone said to be of a sheep. */
  private static void tree(Scene scene) {
    Hand hand = new Hand(scene);
    hand.choose("predict", "Body mass", "Körpermasse");
    hand.choose("from", "Humerus SD", "Oberarmbein SD");
    hand.type("reading", "16.9");
    hand.press("more");
    try {
      Path newick = Files.createTempDirectory("pictures").resolve("invented-tree.nwk");
      Files.writeString(
          newick,
          "(((Bos_taurus:2,(Capra_hircus:1,Ovis_aries:1):1):1,"
              + "(Capreolus_capreolus:1.5,Dama_dama:1.5):1.5):2,Vulpes_vulpes:5);");
      hand.readTree(newick);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    hand.choose("bone-taxon", "Ovis aries");
  }

  /** An equation of one's own, invented, tried on the demo shelf's crocodilians. */
  private static void equations(Scene scene) {
    slenderSnout(scene);
    Hand hand = new Hand(scene);
    hand.press("page-equations");
    try {
      Path own = Files.createTempDirectory("pictures").resolve("own-equations.json");
      Files.writeString(
          own,
          """
          {"equations": [{"key": "own-jaw", "name": "body length of crocodilians from the jaw (invented example)",
          "taxon": "Crocodylia", "appliesTo": "grown animals, invented", "predicts": "body_length",
          "resultUnit": "cm", "element": "mandible", "code": "ML",
          "predictor": "greatest length of the mandible", "predictorUnit": "mm", "form": "LOG_LINE",
          "logBase": 10, "intercept": -0.187, "coefficient": 0.991, "validFrom": 180, "validTo": 640,
          "n": 41, "standardError": 0.031, "rSquared": 0.96,
          "citation": "Invented for this picture, 2026, table 1", "howVerified": "invented",
          "verified": false, "caution": "", "worked": [], "exponent": null}]}
          """);
      hand.readEquations(own);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Mandible of an animal that may be of three taxa. */
  private static void undecided(Scene scene) {
    slenderSnout(scene);
    Hand hand = new Hand(scene);
    hand.press("page-undecided");
    hand.type("own", "");
    hand.type("reading", "420");
    hand.press("undecided-equal");
  }

  private static void methods(Scene scene) {
    slenderSnout(scene);
    new Hand(scene).press("page-methods");
  }
}
