package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import javafx.stage.Stage;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.app.AppFrame;
import org.comparanda.gui.app.Look;
import org.comparanda.gui.app.Screen;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.ReferenceAnimals;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/**
 * From Enter to the finished picture: the reading stored, the answer reckoned, the whole window
 * laid out and painted into an image, all on one thread. Not a test of the build (its name keeps it
 * out); run by {@code mvn -q -pl core,gui -Ptimes test}. Writes target/update-times.txt: time on
 * the wall, and the processor time of all threads, which other programs on the machine disturb
 * less.
 */
@ExtendWith(ApplicationExtension.class)
class UpdateTimes {
  private static final int ROUNDS = 60;
  private static final int WARM_UP = 20;
  private static final List<String> VALUES = List.of("15.8", "32.7", "30.2", "14.9");
  private static final Path RESULT = Path.of("target/update-times.txt");

  private record Time(double wallMs, double processorMs) {}

  private Stage stage;
  private DemoBench room;
  private BenchViewModel bench;
  private AppFrame frame;

  @Start
  void open(Stage opened) throws IOException {
    stage = opened;
    room = DemoBench.in(Files.createTempDirectory("times"), Runnable::run);
  }

  @AfterEach
  void close() {
    room.close();
  }

  @Test
  void withTheDemoShelf(FxRobot robot) throws IOException {
    measure(robot);
  }

  @Test
  void withFiveThousandAnimals(FxRobot robot) throws IOException {
    ReferenceAnimals animals = room.collection().animals();
    animals.add(Crowd.upTo(5000, animals.shelf().animals(), new SplittableRandom(20261125)));
    assertEquals(5000, animals.shelf().animals().size());
    measure(robot);
  }

  private void measure(FxRobot robot) throws IOException {
    robot.interact(this::show);
    List<Time> times = new ArrayList<>();
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
    List<Double> wall = times.stream().map(Time::wallMs).sorted().toList();
    List<Double> processor = times.stream().map(Time::processorMs).sorted().toList();
    String line =
        "%d animals, %d readings: on the wall median %.0f ms, 95th %.0f ms; processor median %.0f, 95th %.0f%n"
            .formatted(
                room.collection().animals().shelf().animals().size(),
                wall.size(),
                at(wall, 0.5),
                at(wall, 0.95),
                at(processor, 0.5),
                at(processor, 0.95));
    Files.createDirectories(RESULT.getParent());
    Files.writeString(RESULT, line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    assertTrue(at(wall, 0.95) > 0, line);
  }

  private static double at(List<Double> sorted, double part) {
    return sorted.get((int) Math.ceil(part * sorted.size()) - 1);
  }

  private void show() {
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

  private void time(boolean counts, List<Time> times) {
    long begun = System.nanoTime();
    long worked = processor();
    bench.readings().pressed(NamedKey.ENTER);
    frame.applyCss();
    frame.layout();
    frame.getScene().snapshot(null);
    if (counts) {
      times.add(new Time((System.nanoTime() - begun) / 1e6, (processor() - worked) / 1e6));
    }
  }

  /** Processor time of this program so far, in nanoseconds. */
  private static long processor() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }
}
