package org.comparanda.gui.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.comparanda.gui.app.AppFrame;
import org.comparanda.gui.app.Look;
import org.comparanda.gui.app.Screen;
import org.comparanda.gui.app.Screens;
import org.comparanda.gui.app.Workplace;
import org.comparanda.gui.text.Glossary;
import org.comparanda.gui.text.Words;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Each word of the design that a screen shows is explained from the keyboard: Ctrl+F1, arrows. */
@ExtendWith(ApplicationExtension.class)
class WordsReachableTest {
  private static final List<String> DESIGN =
      List.of(
          "element",
          "side",
          "portion",
          "animal",
          "animals",
          "taxon",
          "taxa",
          "lot",
          "lots",
          "tray",
          "trays",
          "NISP",
          "MNI",
          "MNE",
          "MAU",
          "TEM",
          "OLS",
          "SMA",
          "reading",
          "readings",
          "call",
          "calls",
          "suggestion",
          "share",
          "typicality",
          "typical",
          "stock",
          "drawer",
          "look-alike",
          "kappa",
          "hash",
          "rules",
          "shelf",
          "bench");

  private Stage stage;

  @Start
  void open(Stage opened) {
    stage = opened;
  }

  @Test
  void everyWordThatAScreenShowsIsListedByOneKeyAndLeftByAnother(FxRobot robot) throws IOException {
    ReferenceTables tables = ReferenceTables.shipped();
    try (Collection collection = DemoCollection.make(tables)) {
      Workplace place =
          new Workplace(
              Runnable::run,
              Runnable::run,
              Locale.ENGLISH,
              DemoCollection.CLOCK,
              new Look(),
              tables,
              collection,
              new NoMemory());
      List<Screen> screens = Screens.of(place);
      AppFrame frame = new AppFrame(screens, new Look(), Words.of("app", Locale.ENGLISH));
      robot.interact(
          () -> {
            stage.setScene(frame.scene(1366, 768));
            stage.show();
          });
      for (Screen screen : screens) {
        robot.interact(() -> frame.open(screen));
        robot.interact(frame::applyCss);
        robot.interact(frame::layout);
        TreeSet<String> shown = new TreeSet<>();
        robot.interact(
            () -> shown.addAll(designWords(((ScrollPane) frame.getCenter()).getContent())));
        robot.press(KeyCode.CONTROL, KeyCode.F1).release(KeyCode.F1, KeyCode.CONTROL);
        List<Glossary.Term> listed = listed(stage.getScene());
        for (String word : shown) {
          assertTrue(
              listed.stream().anyMatch(t -> t.seen().matcher(word).matches()),
              screen.key() + " shows \"" + word + "\"");
        }
        assertFalse(shown.isEmpty(), screen.key());
        assertTrue(stage.getScene().getFocusOwner() instanceof ListView, screen.key());
        robot.press(KeyCode.DOWN).release(KeyCode.DOWN);
        ListView<?> list = (ListView<?>) stage.getScene().getFocusOwner();
        assertEquals(Math.min(1, listed.size() - 1), list.getSelectionModel().getSelectedIndex());
        robot.press(KeyCode.ESCAPE).release(KeyCode.ESCAPE);
        assertEquals(null, frame.getBottom());
      }
    }
  }

  private static List<String> designWords(Node screen) {
    return Stream.of(".label", ".button", ".toggle-button")
        .flatMap(kind -> screen.lookupAll(kind).stream())
        .filter(WordsReachableTest::seen)
        .filter(Labeled.class::isInstance)
        .map(node -> ((Labeled) node).getText())
        .filter(text -> text != null)
        .flatMap(text -> List.of(text.split("[^\\p{L}-]+", -1)).stream())
        .flatMap(word -> DESIGN.stream().filter(word::equalsIgnoreCase))
        .toList();
  }

  private static boolean seen(Node node) {
    return node.isVisible() && (node.getParent() == null || seen(node.getParent()));
  }

  @SuppressWarnings("unchecked") // the list of the words pane holds terms
  private static List<Glossary.Term> listed(Scene scene) {
    return List.copyOf(((ListView<Glossary.Term>) scene.lookup("#words-list")).getItems());
  }
}
