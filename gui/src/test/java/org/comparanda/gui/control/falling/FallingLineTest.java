package org.comparanda.gui.control.falling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.Window;
import javax.imageio.ImageIO;
import org.comparanda.gui.control.falling.FallingPicture.Captions;
import org.comparanda.gui.control.falling.FallingPicture.Column;
import org.comparanda.gui.control.falling.FallingPicture.Dot;
import org.comparanda.gui.control.falling.FallingPicture.Presence;
import org.comparanda.gui.control.falling.FallingPicture.Row;
import org.comparanda.gui.control.plot.FigureExport.Format;
import org.comparanda.gui.control.plot.KindLook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The falling line under the pointer, in the real window toolkit without a screen. */
@ExtendWith(ApplicationExtension.class)
class FallingLineTest {
  private static final FallingPicture ONE_DOT =
      new FallingPicture(
          List.of(new Column("Bd", "Bd", "31 mm", Optional.of(31.0))),
          List.of(
              new Row(
                  "a",
                  "Aus bus",
                  "1 animal",
                  KindLook.of(0),
                  Presence.IN_PLAY,
                  Optional.empty(),
                  Map.of("Bd", List.of(new Dot(30, "HB-7", "HB-7, Aus bus, drawer C 4"))))),
          new Captions("share", "typical", "", "", Locale.ROOT));

  private FallingLine line;
  private final List<String> opened = new ArrayList<>();

  @Start
  void open(Stage stage) {
    line = new FallingLine();
    line.motionProperty().set(false);
    line.setOnAnimal(opened::add);
    line.pictureProperty().set(ONE_DOT);
    stage.setScene(new Scene(new StackPane(line), 700, 300));
    stage.show();
  }

  @Test
  void theDotUnderThePointerNamesAnimalAndDrawerAndAClickOpensIt(FxRobot robot) {
    double[] at = dot();
    robot.moveTo(robot.offset(line, javafx.geometry.Pos.TOP_LEFT, at[0], at[1]));
    robot.moveBy(1, 0);
    boolean said =
        Window.getWindows().stream()
            .filter(javafx.scene.control.Tooltip.class::isInstance)
            .anyMatch(w -> ((javafx.scene.control.Tooltip) w).getText().contains("drawer C 4"));
    assertTrue(said);
    robot.clickOn();
    assertEquals(List.of("HB-7"), opened);
  }

  @Test
  void thePngHasPrintQuality(FxRobot robot, @TempDir Path folder) throws Exception {
    Path file = folder.resolve("line.png");
    robot.interact(
        () -> new FallingPrint(ONE_DOT, "Fits.", List.of(), List.of()).write(Format.PNG, file));
    assertTrue(Files.size(file) > 1000);
    // 482 points wide at 600 pixels to the inch of 72 points: 4016.7 pixels
    assertEquals(4017, ImageIO.read(file.toFile()).getWidth());
  }

  /** Where the only dot lies: looked for as the pointer would, pixel by pixel. */
  private double[] dot() {
    for (double y = 0; y < line.getHeight(); y += 2) {
      for (double x = 0; x < line.getWidth(); x += 2) {
        if (line.dotAt(x, y).isPresent()) {
          return new double[] {x + 2, y + 2};
        }
      }
    }
    throw new AssertionError("no dot");
  }
}
