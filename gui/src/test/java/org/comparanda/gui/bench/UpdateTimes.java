package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.stage.Stage;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.app.AppFrame;
import org.comparanda.gui.app.Look;
import org.comparanda.gui.app.Screen;
import org.comparanda.gui.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/**
 * From Enter to the finished picture: the reading stored, the answer reckoned, the whole window
 * laid out and painted into an image, all on one thread. Not a test of the build (its name keeps it
 * out); run by {@code mvn -pl core,gui -am test -Dtest=UpdateTimes
 * -Dsurefire.failIfNoSpecifiedTests=false}. Writes target/update-times.txt.
 */
@ExtendWith(ApplicationExtension.class)
class UpdateTimes {
  private static final int ROUNDS = 60;
  private static final int WARM_UP = 20;
  private static final List<String> VALUES = List.of("15.8", "32.7", "30.2", "14.9");

  private DemoBench room;
  private BenchViewModel bench;
  private AppFrame frame;

  @Start
  void open(Stage stage) throws IOException {
    room = DemoBench.in(Files.createTempDirectory("times"), Runnable::run);
    bench = new BenchViewModel(room.place());
    BenchView view =
        new BenchView(bench, room.place().words(), room.place().numbers(), System::nanoTime);
    view.fallingLine().motionProperty().set(false);
    frame =
        new AppFrame(
            List.of(new Screen("bench", () -> view)), new Look(), Words.of("app", Locale.ENGLISH));
    stage.setScene(frame.scene(1366, 768));
    stage.show();
  }

  @Test
  void fromEnterToTheFinishedPicture(FxRobot robot) throws IOException {
    List<Double> times = new ArrayList<>();
    robot.interact(() -> DemoBench.choose(bench, "fresh", "N-1"));
    robot.interact(() -> bench.state().typed('\n'));
    for (int round = 0; round < ROUNDS; round++) {
      String value = VALUES.get(round % VALUES.size());
      robot.interact(() -> value.chars().forEach(c -> bench.readings().typed((char) c)));
      boolean counts = round >= WARM_UP;
      robot.interact(() -> time(counts, times));
      if (round % VALUES.size() == VALUES.size() - 1) {
        robot.interact(() -> VALUES.forEach(v -> bench.readings().typed('/')));
      }
    }
    List<Double> sorted = times.stream().sorted().toList();
    double p95 = sorted.get((int) Math.ceil(0.95 * sorted.size()) - 1);
    String line =
        "from Enter to the finished picture, %d animals, %d readings: median %.0f ms, 95th %.0f ms%n"
            .formatted(
                room.collection().animals().shelf().animals().size(),
                sorted.size(),
                sorted.get(sorted.size() / 2),
                p95);
    Files.writeString(Path.of("target/update-times.txt"), line);
    assertTrue(p95 > 0, line);
  }

  private void time(boolean counts, List<Double> times) {
    long begun = System.nanoTime();
    bench.readings().pressed(NamedKey.ENTER);
    frame.applyCss();
    frame.layout();
    frame.getScene().snapshot(null);
    if (counts) {
      times.add((System.nanoTime() - begun) / 1e6);
    }
  }
}
