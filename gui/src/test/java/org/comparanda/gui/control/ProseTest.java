package org.comparanda.gui.control;

import static org.junit.jupiter.api.Assertions.assertEquals;

import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Tab goes on from a box of several lines, as from any field (W3C, WCAG 2.1, criterion 2.1.2). */
@ExtendWith(ApplicationExtension.class)
class ProseTest {
  private TextField before;
  private Prose prose;
  private TextField after;

  @Start
  void open(Stage stage) {
    before = new TextField();
    prose = new Prose();
    after = new TextField();
    stage.setScene(new Scene(new VBox(before, prose, after)));
    stage.show();
    prose.setText("ribs healed");
    prose.requestFocus();
  }

  @Test
  void tabGoesOnAndWritesNothing(FxRobot robot) {
    robot.push(KeyCode.TAB);
    assertEquals(after, after.getScene().getFocusOwner());
    assertEquals("ribs healed", prose.getText());
  }

  @Test
  void shiftTabGoesBack(FxRobot robot) {
    robot.push(KeyCode.SHIFT, KeyCode.TAB);
    assertEquals(before, before.getScene().getFocusOwner());
    assertEquals("ribs healed", prose.getText());
  }

  @Test
  void tabLeavesAlsoWhatCanOnlyBeRead(FxRobot robot) {
    robot.interact(() -> prose.setEditable(false));
    robot.push(KeyCode.TAB);
    assertEquals(after, after.getScene().getFocusOwner());
  }

  @Test
  void enterBeginsANewLine(FxRobot robot) {
    robot.interact(prose::end);
    robot.push(KeyCode.ENTER);
    assertEquals("ribs healed\n", prose.getText());
  }
}
