package org.comparanda.gui.secondlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.comparanda.measurement.BoneId;
import org.comparanda.tray.CallHistory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** While a look is blind, no node of the scene holds the call or the suggestion. */
@ExtendWith(ApplicationExtension.class)
class BlindLookTest {
  /** Call, ground and suggestion of the room's first call. */
  private static final List<String> HIDDEN =
      List.of("Ovis aries", "Capra hircus", "broad groove", "Cervus elaphus");

  @TempDir static Path folder;
  private LookRoom room;
  private Scene scene;

  @Start
  void open(Stage stage) throws java.io.IOException {
    room = new LookRoom(java.nio.file.Files.createTempDirectory(folder, "room"));
    SecondLookViewModel model = room.model(Optional.of(LookRoom.BEN));
    StackPane dressed = new StackPane(new SecondLookView(model, "invented"));
    dressed.getStylesheets().add("/org/comparanda/gui/app/light.css");
    scene = new Scene(dressed, 1234, 768);
    stage.setScene(scene);
    stage.show();
  }

  @AfterEach
  void close() {
    room.collection.close();
  }

  @Test
  void noNodeHoldsCallOrSuggestionUntilTheLookIsRecorded(FxRobot robot) {
    robot.interact(() -> robot.lookup("#why-shown").queryAs(ToggleButton.class).fire());
    robot.interact(() -> robot.lookup("#drawn").queryTableView().getSelectionModel().select(0));
    assertEquals("L-1", robot.lookup("#blind-bone").queryAs(Label.class).getText());
    String shown = everything(robot);
    HIDDEN.forEach(hidden -> assertFalse(shown.contains(hidden), hidden + " is in the scene"));

    robot.clickOn("#call-name").write("Capra hircus").type(KeyCode.ENTER);
    String both = everything(robot);
    List.of("Ovis aries", "broad groove", "Cervus elaphus", "Invented Ann")
        .forEach(now -> assertTrue(both.contains(now), now + " is missing"));
    assertEquals(
        1,
        new CallHistory(room.collection.trays().callsOn(new BoneId("L-1"))).secondLooks().size());
  }

  @Test
  void lookIsTakenByKeysAlone(FxRobot robot) {
    robot.interact(() -> robot.lookup("#drawn").queryTableView().requestFocus());
    robot.type(KeyCode.DOWN);
    assertEquals("L-3", robot.lookup("#blind-bone").queryAs(Label.class).getText());
    robot
        .type(KeyCode.ENTER)
        .write("t")
        .type(KeyCode.TAB)
        .write("l")
        .type(KeyCode.TAB)
        .write("s")
        .type(KeyCode.TAB);
    robot.write("Bovidae indet.").type(KeyCode.ENTER);
    assertEquals(
        "The calls agree at Bovidae only.",
        robot.lookup("#likeness").queryAs(Label.class).getText());
    assertEquals(1, room.collection.trays().elementCallsOn(new BoneId("L-3")).size());
    robot.type(KeyCode.ESCAPE);
    assertTrue(robot.lookup("#likeness").tryQuery().isEmpty());
  }

  /** Every text that any node of the scene holds, shown or not. */
  private String everything(FxRobot robot) {
    List<String> texts = new ArrayList<>();
    robot.interact(() -> collect(scene.getRoot(), texts));
    return String.join("\n", texts);
  }

  private static void collect(Node node, List<String> texts) {
    Stream.of(node.getAccessibleText(), node.getAccessibleHelp(), node.getUserData(), node.getId())
        .forEach(text -> texts.add(String.valueOf(text)));
    node.getProperties().values().forEach(value -> texts.add(String.valueOf(value)));
    if (node instanceof Labeled labeled) {
      texts.add(labeled.getText());
    }
    if (node instanceof Text text) {
      texts.add(text.getText());
    }
    if (node instanceof TextInputControl input) {
      texts.add(input.getText() + input.getPromptText());
    }
    if (node instanceof Control control && control.getTooltip() != null) {
      texts.add(control.getTooltip().getText());
    }
    if (node instanceof TableView<?> table) {
      table.getItems().forEach(item -> texts.add(String.valueOf(item)));
    }
    if (node instanceof ComboBox<?> box) {
      box.getItems().forEach(item -> texts.add(String.valueOf(item)));
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, texts));
    }
  }
}
