package org.comparanda.gui.pictures;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;

/** States of the Shelf. */
final class ShelfPoses {
  private ShelfPoses() {}

  /** An invented table of a house with words of its own, under a title. */
  static void importMapping(Scene scene) {
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

  /** A remark of a cast is the first of the list. */
  static void findings(Scene scene) {
    Hand hand = new Hand(scene);
    hand.press("page-findings");
    hand.select("findings", 0);
    hand.fill("who", "demo");
  }

  static void animal(Scene scene) {
    new Hand(scene).select("animals", 3);
  }

  /** The heel bones of a sheep, the right one a tenth broader than the left. */
  static void skeleton(Scene scene) {
    heelBones(scene);
    new Hand(scene).typed("21.5");
  }

  static void heelBones(Scene scene) {
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

  /** A left humerus that is there in two pieces. */
  static void pieces(Scene scene) {
    animal(scene);
    Hand hand = new Hand(scene);
    hand.press("open-skeleton");
    hand.type("skeleton-who", "demo");
    hand.press("element-humerus");
    hand.press("skeleton-left");
    if (scene.lookup("#piece-distal") == null) {
      hand.choose("portion", "upper", "oberer");
      hand.press("state-keys");
      hand.press("piece-another");
      hand.press("state-keys");
    }
    hand.press("piece-distal");
  }

  /** A femur that may be human. */
  static void aside(Scene scene) {
    boneState(scene);
    if (scene.lookup("#stop-aside") == null) {
      Hand hand = new Hand(scene);
      hand.press("state-keys");
      hand.typed("---");
      hand.lay();
      hand.press("stop-yes");
    }
  }

  /** A heel bone that was registered as the wrong side. */
  static void boneMove(Scene scene) {
    heelBones(scene);
    Hand hand = new Hand(scene);
    hand.press("skeleton-move");
    hand.fill("skeleton-why", "sides taken for each other");
  }

  /** The state of the first femur is asked. */
  static void boneState(Scene scene) {
    animal(scene);
    Hand hand = new Hand(scene);
    hand.press("open-skeleton");
    hand.type("skeleton-who", "demo");
    hand.press("element-femur");
  }

  static void names(Scene scene) {
    Hand hand = new Hand(scene);
    hand.press("page-taxa");
    scene.getRoot().applyCss();
    scene.getRoot().layout();
    hand.select("taxa", 5);
  }

  /** A card with an invented permit, a day that is none, and what its double would give it. */
  static void card(Scene scene) {
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
  static void importRefused(Scene scene) {
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
}
