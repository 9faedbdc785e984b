package org.comparanda.gui.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.SimpleStringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class ReadableColumnsTest {
  private final AtomicInteger read = new AtomicInteger();
  private Stage stage;
  private ObservableList<String> rows;
  private TableView<String> table;
  private TableColumn<String, String> column;

  @Start
  void open(Stage opened) {
    stage = opened;
    rows = FXCollections.observableArrayList("hill goat", "a longhornedmountaingoat", "roe");
    table = new TableView<>(rows);
    column = new TableColumn<>("Kind");
    column.setCellValueFactory(
        cell -> {
          read.incrementAndGet();
          return new SimpleStringProperty(cell.getValue());
        });
    table.getColumns().addAll(List.of(new TableColumn<>("Own share rises by"), column));
    table.getColumns().add(new TableColumn<>("Why"));
    ReadableColumns.of(table);
    rows.add("red deer");
  }

  @Test
  void everyRowIsReadOnceHoweverOftenTheTableIsSearched(FxRobot robot) {
    List<String> all = List.copyOf(rows);
    robot.interact(() -> rows.setAll(all.get(2)));
    robot.interact(() -> rows.setAll(all));
    assertEquals(4, read.get());
  }

  @Test
  void aColumnIsAsWideAsTheLongestWordOfTheRowsThatAreThere(FxRobot robot) {
    double wide = column.getMinWidth();
    List<String> all = List.copyOf(rows);
    robot.interact(() -> rows.setAll(all.get(2)));
    assertTrue(column.getMinWidth() < wide, column.getMinWidth() + " and " + wide);
    robot.interact(() -> rows.setAll(all));
    assertEquals(wide, column.getMinWidth());
  }

  @Test
  void aTableWithRoomForItsColumnsDoesNotScrollSideways(FxRobot robot) {
    robot.interact(
        () -> {
          stage.setScene(new Scene(table, 600, 300));
          stage.show();
        });
    assertEquals(
        List.of(),
        table.lookupAll(".scroll-bar:horizontal").stream().filter(Node::isVisible).toList());
  }
}
