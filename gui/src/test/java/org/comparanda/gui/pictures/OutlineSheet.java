package org.comparanda.gui.pictures;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.TilePane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.comparanda.gui.app.Look;
import org.comparanda.gui.app.Theme;
import org.comparanda.gui.control.outline.BoneDrawing;
import org.comparanda.gui.control.outline.BoneSketch;
import org.comparanda.measurement.Outline;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** All outline drawings on one sheet, side by side, so that the weak ones show. */
@ExtendWith(ApplicationExtension.class)
class OutlineSheet {
  private static final int COLUMNS = 13;

  private Stage stage;

  @Start
  void open(Stage opened) {
    stage = opened;
  }

  @ParameterizedTest
  @EnumSource(Theme.class)
  void everyDrawingStandsOnTheSheet(Theme theme, FxRobot robot) {
    Path file =
        Path.of(
            "../docs/pictures/outlines-%s.png".formatted(theme.name().toLowerCase(Locale.ROOT)));
    robot.interact(() -> show(theme));
    robot.interact(() -> write(file));
    assertTrue(Files.exists(file));
  }

  private void show(Theme theme) {
    TilePane sheet = new TilePane();
    sheet.getStyleClass().add("frame");
    sheet.setPrefColumns(COLUMNS);
    for (Outline outline : ReferenceTables.shipped().outlines()) {
      outline.views().forEach(view -> sheet.getChildren().add(drawn(outline, view)));
    }
    int rows = (sheet.getChildren().size() + COLUMNS - 1) / COLUMNS;
    Scene scene = new Scene(sheet, 1800, 10 + 127 * rows);
    Look look = new Look();
    look.themeProperty().set(theme);
    look.dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  private static VBox drawn(Outline outline, Outline.View view) {
    Outline.Box b = view.box();
    BoneDrawing drawing = new BoneDrawing();
    drawing.getStyleClass().add("which-drawing");
    drawing
        .sketchProperty()
        .set(
            Optional.of(
                new BoneSketch(
                    new BoneSketch.Box(b.x(), b.y(), b.width(), b.height()),
                    view.edge(),
                    view.lines(),
                    List.of(),
                    Optional.empty(),
                    view.caption())));
    Label name = new Label(outline.element().value());
    name.getStyleClass().add("note");
    VBox all = new VBox(drawing, name);
    all.setAlignment(Pos.CENTER);
    all.setPrefWidth(138);
    return all;
  }

  private void write(Path file) {
    try {
      SmallPng.write(stage.getScene().snapshot(null), file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
