package org.comparanda.gui.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.comparanda.gui.app.Look;
import org.comparanda.gui.text.Words;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/**
 * Every screen in every state of {@link Stand#cases} says to a German nothing in English: no text
 * of the English bundles that has another in German, no sentence of core as core says it, no name
 * of an element, and no other sentence, told by common words. What people typed and what old cards
 * and tables hold is as they wrote it.
 */
@ExtendWith(ApplicationExtension.class)
class GermanTest {
  private static final Pattern COMMON =
      Pattern.compile(
          "\\b(the|of|and|or|is|are|not|with|from|this|that|which|by|to|no|one|has|it|on|for|can"
              + "|than|its)\\b");

  /** Invented things say so; nobody translates what a person wrote or printed. */
  private static final Pattern WRITTEN =
      Pattern.compile(
          "simulated|[Ii]nvented|permit found in the file|greatest length of the man.*"
              + "|^side$|^element$|Erlaubt: left");

  private static final List<String> BUNDLES =
      List.of(
          "app",
          "bench",
          "caliper",
          "calling",
          "daybook",
          "houserules",
          "keeper",
          "oldcards",
          "photos",
          "pile",
          "secondlook",
          "shelf",
          "sizedesk",
          "terms",
          "tray",
          "welcome");

  private Stage stage;

  @Start
  void open(Stage opened) {
    stage = opened;
  }

  @TestFactory
  List<DynamicTest> everyScreenSpeaksGerman(FxRobot robot) {
    Stand stand = Stand.in(Locale.GERMAN);
    Set<String> english = english();
    return stand.cases().stream()
        .map(
            c ->
                DynamicTest.dynamicTest(
                    c.name(), () -> assertEquals(List.of(), left(robot, c, stand, english))))
        .toList();
  }

  private List<String> left(FxRobot robot, Stand.Case state, Stand stand, Set<String> english) {
    Words german = Words.of("app", Locale.GERMAN);
    List<String> left = new ArrayList<>();
    Look look = new Look();
    robot.interact(() -> stand.on(stage, state, look));
    robot.interact(
        () ->
            new Seen(stage.getScene())
                .nodes().stream()
                    .filter(Text.class::isInstance)
                    .filter(node -> !written(node))
                    .map(node -> ((Text) node).getText())
                    .filter(text -> !WRITTEN.matcher(text).find())
                    .filter(
                        text ->
                            english.contains(text)
                                || !german.said(text).equals(text)
                                || COMMON.matcher(text).find())
                    .forEach(left::add));
    for (int percent : List.of(150, 200)) {
      robot.interact(() -> look.textPercentProperty().set(percent));
      robot.interact(() -> stage.getScene().getRoot().layout());
      robot.interact(
          () -> Seen.all().forEach(s -> s.cut().forEach(f -> left.add(percent + " % " + f))));
    }
    robot.interact(() -> Seen.closeAllBut(stage));
    return left;
  }

  /** Fields that people type into, the cards and tables that they brought, a row of the file. */
  private static boolean written(Node node) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (up instanceof TextInputControl
          || Set.of("cards", "card-text", "mapping-rows", "row-as-kept")
              .contains(String.valueOf(up.getId()))) {
        return true;
      }
    }
    return false;
  }

  private static Set<String> english() {
    Set<String> english = new HashSet<>();
    BUNDLES.forEach(part -> english.addAll(bundle(part)));
    ReferenceTables german = ReferenceTables.shipped(Locale.GERMAN);
    Set<String> same =
        german.protocol().elements().stream().map(e -> e.name()).collect(Collectors.toSet());
    ReferenceTables.shipped().protocol().elements().stream()
        .map(e -> e.name())
        .filter(name -> !same.contains(name))
        .forEach(english::add);
    return english;
  }

  /** Whole texts of a bundle that differ between the languages. */
  private static Set<String> bundle(String part) {
    String file = Words.class.getPackageName() + "." + part;
    ResourceBundle.Control alone =
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
    ResourceBundle english = ResourceBundle.getBundle(file, Locale.ROOT, alone);
    ResourceBundle german = ResourceBundle.getBundle(file, Locale.GERMAN, alone);
    Set<String> inGerman =
        german.keySet().stream().map(german::getString).collect(Collectors.toSet());
    return english.keySet().stream()
        .map(english::getString)
        .filter(text -> !text.contains("{") && !inGerman.contains(text))
        .collect(Collectors.toSet());
  }
}
