package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import javafx.scene.image.WritableImage;
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
 * laid out and painted into an image, one after the other. Not a test of the build (its name keeps
 * it out); run by {@code mvn -q -pl core,gui -Ptimes test}. Writes target/update-times.txt: time on
 * the wall, and processor time, which other programs on the machine disturb less: of all threads,
 * and of the two that store, reckon, lay out and paint, part by part. Painting always does the
 * whole window here; what it costs when nothing has changed stands apart.
 */
@ExtendWith(ApplicationExtension.class)
class UpdateTimes {
  private static final int ROUNDS = 200;
  private static final int WARM_UP = 40;
  private static final List<String> VALUES = List.of("15.8", "32.7", "30.2", "14.9");
  private static final Path RESULT = Path.of("target/update-times.txt");

  /** Milliseconds: on the wall and of all threads; the rest of the two threads that work. */
  private record Time(
      double wall,
      double allThreads,
      double storedAndAnswered,
      double laidOut,
      double painted,
      double paintedAgain) {}

  private Stage stage;
  private DemoBench room;
  private BenchViewModel bench;
  private AppFrame frame;

  /** Painted over each time: a new picture of 4 MB a reading would measure the memory's keeper. */
  private final WritableImage picture = new WritableImage(1366, 768);

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
    int animals = room.collection().animals().shelf().animals().size();
    String report =
        "%d animals, %d readings%n".formatted(animals, times.size())
            + line("on the wall", times, Time::wall)
            + line("processor, all threads", times, Time::allThreads)
            + line("  stored and answered", times, Time::storedAndAnswered)
            + line("  styled and laid out", times, Time::laidOut)
            + line("  whole window painted", times, Time::painted)
            + line("apart: painted again, nothing changed", times, Time::paintedAgain);
    Files.createDirectories(RESULT.getParent());
    Files.writeString(RESULT, report, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    assertEquals(ROUNDS - WARM_UP, times.size(), report);
  }

  private static String line(String what, List<Time> times, ToDoubleFunction<Time> part) {
    List<Double> sorted = times.stream().mapToDouble(part).sorted().boxed().toList();
    return "%-40s median %4.0f ms, 95th %4.0f ms%n"
        .formatted(what, at(sorted, 0.5), at(sorted, 0.95));
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
    long all = ofAllThreads();
    long start = ofWorkers();
    bench.readings().pressed(NamedKey.ENTER);
    long answered = ofWorkers();
    frame.applyCss();
    frame.layout();
    long laidOut = ofWorkers();
    frame.getScene().snapshot(picture);
    long painted = ofWorkers();
    double wall = (System.nanoTime() - begun) / 1e6;
    double together = (ofAllThreads() - all) / 1e6;
    frame.getScene().snapshot(picture);
    long again = ofWorkers();
    if (counts) {
      times.add(
          new Time(
              wall,
              together,
              (answered - start) / 1e6,
              (laidOut - answered) / 1e6,
              (painted - laidOut) / 1e6,
              (again - painted) / 1e6));
    }
  }

  /** Processor time of this program so far, in nanoseconds. */
  private static long ofAllThreads() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  /** Processor time of the window's thread and the one that paints, in nanoseconds. */
  private static long ofWorkers() {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    return Stream.of(threads.getThreadInfo(threads.getAllThreadIds()))
        .filter(Objects::nonNull)
        .filter(t -> t.getThreadName().matches("JavaFX Application Thread|QuantumRenderer-0"))
        .mapToLong(t -> threads.getThreadCpuTime(t.getThreadId()))
        .sum();
  }
}
