package org.comparanda.gui.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.comparanda.gui.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class ShelfViewTest {
  private final AnimalsInMemory animals = new AnimalsInMemory();
  private Optional<Path> chosen = Optional.empty();

  @Start
  void open(Stage stage) {
    ShelfView view =
        new ShelfView(
            ShelfViewModelTest.model(animals),
            Words.of("shelf", Locale.ENGLISH),
            "invented",
            () -> chosen,
            ShelfPages.none());
    StackPane dressed = new StackPane(view);
    dressed.getStylesheets().add("/org/comparanda/gui/app/light.css");
    stage.setScene(new Scene(dressed, 1234, 768));
    stage.show();
  }

  @Test
  void importedTableIsSearchedOpenedAndCounted(FxRobot robot, @TempDir Path folder)
      throws IOException {
    chosen = Optional.of(Files.writeString(folder.resolve("t.csv"), ShelfViewModelTest.SOUND));
    robot.clickOn("#import-table").clickOn("#import-add").clickOn("#import-leave");
    TableView<?> table = robot.lookup("#animals").queryTableView();
    assertEquals(4, table.getItems().size());
    robot.clickOn("#search").write("T-2");
    assertEquals(1, table.getItems().size());
    robot.interact(() -> table.getSelectionModel().select(0));
    assertTrue(robot.lookup("#animal-card .reading").queryAs(Label.class).getText().equals("T-2"));
    assertEquals("1 of 4 animals", robot.lookup("#count").queryAs(Label.class).getText());
  }

  @Test
  void refusedTableShowsItsProblems(FxRobot robot, @TempDir Path folder) throws IOException {
    chosen =
        Optional.of(
            Files.writeString(
                folder.resolve("bad.csv"),
                "animal,taxon,element,GL [mm]\nT-8,Ovis aries,humerus,15o.2\n"));
    robot.clickOn("#import-table");
    assertEquals(1, robot.lookup("#problems").queryTableView().getItems().size());
    assertTrue(
        robot
            .lookup("#import-sentence")
            .queryAs(Label.class)
            .getText()
            .endsWith("Nothing of this file was stored."));
    assertEquals(0, animals.shelf().animals().size());
  }
}
