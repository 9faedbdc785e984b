package org.comparanda.gui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.comparanda.gui.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class AppFrameTest {
  private final Look look = new Look();
  private AppFrame frame;

  @Start
  void open(Stage stage) {
    List<Screen> screens =
        List.of(
            new Screen("bench", () -> new StackPane(new Label("one"))),
            new Screen("shelf", () -> new StackPane(new Label("two"))));
    frame = new AppFrame(screens, look, Words.of("app", Locale.ENGLISH));
    stage.setScene(frame.scene(1366, 768));
    stage.show();
  }

  @Test
  void theKeysChangeTheScreen(FxRobot robot) {
    robot.press(KeyCode.CONTROL, KeyCode.DIGIT2).release(KeyCode.DIGIT2, KeyCode.CONTROL);
    assertEquals(
        "two",
        ((Label) ((StackPane) ((ScrollPane) frame.getCenter()).getContent()).getChildren().get(0))
            .getText());
  }

  @Test
  void everyScreenOfTheDemoSaysThatItIsSimulated(FxRobot robot) {
    assertEquals("simulated demo data", robot.lookup("#demo-note").queryLabeled().getText());
  }

  @Test
  void theThemeButtonChangesTheColours(FxRobot robot) {
    robot.clickOn("#theme");
    assertEquals(Theme.DARK, look.themeProperty().get());
    assertTrue(frame.getScene().getStylesheets().get(0).endsWith("dark.css"));
  }

  @Test
  void textStaysBetweenOneAndTwoTimes(FxRobot robot) {
    robot.clickOn("#text-larger").clickOn("#text-larger").clickOn("#text-larger");
    robot.clickOn("#text-larger").clickOn("#text-larger");
    assertEquals(200, look.textPercentProperty().get());
  }
}
