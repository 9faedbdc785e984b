package org.comparanda.gui.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.SimpleStringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
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
  private ObservableList<String> rows;
  private TableColumn<String, String> column;

  @Start
  void open(Stage stage) {
    rows = FXCollections.observableArrayList("hill goat", "a longhornedmountaingoat", "roe");
    TableView<String> table = new TableView<>(rows);
    column = new TableColumn<>("Kind");
    column.setCellValueFactory(
        cell -> {
          read.incrementAndGet();
          return new SimpleStringProperty(cell.getValue());
        });
    table.getColumns().add(column);
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
}
