package org.comparanda.gui.pictures;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Scene;

/** States of the Size Desk. */
final class SizeDeskPoses {
  private SizeDeskPoses() {}

  /** A gharial of the shelf, recorded as 3.66 m long, put on the line of broad-snouted jaws. */
  static void slenderSnout(Scene scene) {
    Hand hand = new Hand(scene);
    hand.choose("from", "Mandible ML", "Unterkiefer ML");
    hand.untick("taxa", entry -> entry.contains("Gavialis"));
    hand.type("own", "HB-0252");
  }

  static void diagnostics(Scene scene) {
    slenderSnout(scene);
    new Hand(scene).press("page-diagnostics");
  }

  /** The rest of what can be chosen, level and correction changed. */
  static void more(Scene scene) {
    slenderSnout(scene);
    Hand hand = new Hand(scene);
    hand.press("more");
    hand.type("level", "90");
    hand.choose("correction", "smearing", "Residuenmittel");
  }

  /** A humerus and a femur of one find that can't be of one animal. */
  static void severalBones(Scene scene) {
    Hand hand = new Hand(scene);
    hand.choose("predict", "Body mass", "Körpermasse");
    hand.choose("from", "Humerus SD", "Oberarmbein SD");
    hand.type("reading", "16.9");
    hand.press("further-add");
    hand.choose("further-0", "Femur SD", "Oberschenkelbein SD");
    hand.type("further-reading-0", "26");
  }

  /** A line across taxa on an invented tree, for a bone said to be of a sheep. */
  static void tree(Scene scene) {
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
  static void equations(Scene scene) {
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
  static void undecided(Scene scene) {
    slenderSnout(scene);
    Hand hand = new Hand(scene);
    hand.press("page-undecided");
    hand.type("own", "");
    hand.type("reading", "420");
    hand.press("undecided-equal");
  }

  static void methods(Scene scene) {
    slenderSnout(scene);
    new Hand(scene).press("page-methods");
  }
}
