package org.comparanda.gui.pictures;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.comparanda.gui.app.Look;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A collection without anything: every screen and every page says what to do. */
@ExtendWith(ApplicationExtension.class)
class EmptyRoomTest {
  private record Page(String screen, String button, String says) {}

  private static final List<Page> PAGES =
      List.of(
          new Page("bench", "", "Put an empty tray on the bench and key its bones in"),
          new Page("tray", "", "No tray yet. Begin one on the Bench"),
          new Page("secondlook", "", "Call bones on the Bench or the Tray"),
          new Page("secondlook", "page-agreement", "Take looks on the page beside this one."),
          new Page("shelf", "", "No animal on the shelf yet. Add one, or import a table"),
          new Page("shelf", "page-findings", "Findings come when animals are added"),
          new Page("shelf", "page-stock", "Add animals and measure their bones"),
          new Page("shelf", "page-wanted", "Measure more animals"),
          new Page("shelf", "page-taxa", "Choose a name in the list."),
          new Page("sizedesk", "", "Import animals with body length, body mass or measured bones"),
          new Page("oldcards", "", "Bring in a legacy list"),
          new Page("pile", "", "Put what comes in on the pile"),
          new Page("daybook", "", "Choose an entry"),
          new Page("houserules", "", "Choose a rule"));

  private Stage stage;

  @Start
  void open(Stage opened) {
    stage = opened;
  }

  @TestFactory
  Stream<DynamicTest> everyPageOfAnEmptyCollectionSaysWhatToDo(FxRobot robot) {
    Stand stand = Stand.in(Locale.ENGLISH);
    return PAGES.stream()
        .map(
            page ->
                DynamicTest.dynamicTest(
                    page.screen() + " " + page.button(), () -> says(robot, stand, page)));
  }

  private void says(FxRobot robot, Stand stand, Page page) {
    robot.interact(
        () ->
            stand.on(
                stage,
                new Stand.Case(page.screen(), page.screen(), Pose.Shelf.EMPTY, scene -> {}),
                new Look()));
    if (!page.button().isEmpty()) {
      robot.interact(() -> new Hand(stage.getScene()).press(page.button()));
    }
    robot.interact(() -> new Hand(stage.getScene()).lay());
    String seen = texts(stage.getScene());
    assertTrue(seen.contains(page.says()), seen);
  }

  private static String texts(Scene scene) {
    return Stream.of(".label", ".button", ".toggle-button")
        .flatMap(kind -> scene.getRoot().lookupAll(kind).stream())
        .filter(EmptyRoomTest::seen)
        .filter(Labeled.class::isInstance)
        .map(node -> ((Labeled) node).getText())
        .filter(text -> text != null && !text.isBlank())
        .collect(Collectors.joining(" | "));
  }

  private static boolean seen(Node node) {
    return node.isVisible() && (node.getParent() == null || seen(node.getParent()));
  }
}
