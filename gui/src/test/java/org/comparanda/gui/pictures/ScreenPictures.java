package org.comparanda.gui.pictures;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.comparanda.gui.app.AppFrame;
import org.comparanda.gui.app.Look;
import org.comparanda.gui.app.Screen;
import org.comparanda.gui.app.Screens;
import org.comparanda.gui.app.Theme;
import org.comparanda.gui.app.Workplace;
import org.comparanda.gui.text.Words;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** One picture of every pose in both themes and both sizes, into docs/pictures. */
@ExtendWith(ApplicationExtension.class)
class ScreenPictures {
  private static final Path FOLDER = Path.of("../docs/pictures");

  private record Size(int width, int height) {}

  private static final List<Size> SIZES = List.of(new Size(1366, 768), new Size(1920, 1080));
  private Stage stage;

  @Start
  void open(Stage opened) {
    stage = opened;
  }

  @TestFactory
  List<DynamicTest> everyPoseInBothThemesAndSizes(FxRobot robot) throws IOException {
    ReferenceTables tables = ReferenceTables.shipped();
    Function<Pose.Shelf, Collection> collections = DemoCollection.all(tables);
    Files.createDirectories(FOLDER);
    String only = System.getProperty("pictures.only", "");
    return Poses.all().stream()
        .filter(pose -> (pose.screen() + "-" + pose.state()).startsWith(only))
        .filter(pose -> pose.screen().startsWith(System.getProperty("screen", "")))
        .map(
            pose ->
                DynamicTest.dynamicTest(
                    pose.screen() + " " + pose.state(),
                    () -> takeAll(robot, pose, tables, collections.apply(pose.shelf()))))
        .toList();
  }

  private void takeAll(FxRobot robot, Pose pose, ReferenceTables tables, Collection collection) {
    for (Theme theme : Theme.values()) {
      for (Size size : SIZES) {
        Path file = FOLDER.resolve(pose.file(theme, size.width(), size.height()));
        robot.interact(() -> stand(pose, theme, size, tables, collection));
        // A second turn of the window's thread: what the pose caused is laid out by then.
        robot.interact(() -> write(stage.getScene(), file));
        assertTrue(Files.exists(file), file.toString());
      }
    }
  }

  private void stand(
      Pose pose, Theme theme, Size size, ReferenceTables tables, Collection collection) {
    Look look = new Look();
    look.themeProperty().set(theme);
    look.motionProperty().set(false);
    List<Runnable> waiting = new ArrayList<>();
    Workplace place =
        new Workplace(
            Runnable::run,
            pose.screen().equals("shelf") ? Runnable::run : waiting::add,
            Runnable::run,
            Locale.ENGLISH,
            DemoCollection.CLOCK,
            look,
            tables,
            collection,
            new PoseMemory(pose));
    List<Screen> screens = Screens.of(place);
    if (pose.screen().equals("welcome")) {
      Scene scene = Welcome.scene(collection, Locale.ENGLISH, size.width(), size.height());
      look.dress(scene);
      stage.setScene(scene);
      stage.show();
      pose.take().accept(scene);
      return;
    }
    AppFrame frame = new AppFrame(screens, look, Words.of("app", Locale.ENGLISH));
    Scene scene = frame.scene(size.width(), size.height());
    stage.setScene(scene);
    stage.show();
    screens.stream()
        .filter(s -> s.key().equals(pose.screen()))
        .findFirst()
        .ifPresentOrElse(frame::open, () -> missing(pose));
    frame.applyCss();
    frame.layout();
    pose.take().accept(scene);
    if (pose.state().equals("reasons")) {
      List.copyOf(waiting).forEach(Runnable::run);
    }
  }

  private static void missing(Pose pose) {
    throw new IllegalStateException("There is no screen \"" + pose.screen() + "\".");
  }

  private static void write(Scene scene, Path file) {
    try {
      SmallPng.write(scene.snapshot(null), file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
