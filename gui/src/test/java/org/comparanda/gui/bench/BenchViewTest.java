package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.comparanda.capture.BurstDetector;
import org.comparanda.gui.app.AppFrame;
import org.comparanda.gui.app.Look;
import org.comparanda.gui.app.Screen;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.BoneId;
import org.comparanda.suggestion.Method;
import org.comparanda.suggestion.Trial;
import org.comparanda.tray.TrayBone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The Bench in a window of the real toolkit, without a screen. */
@ExtendWith(ApplicationExtension.class)
class BenchViewTest {
  private static final long SLOW_HAND = 100_000_000; // 100 ms from key to key, in nanoseconds

  private static final long CALIPER = 5_000_000; // 5 ms from key to key

  private final AtomicLong time = new AtomicLong();
  private long step = SLOW_HAND;
  private DemoBench room;
  private BenchViewModel bench;

  @Start
  void open(Stage stage) throws IOException {
    room = DemoBench.in(Files.createTempDirectory("bench"), Runnable::run);
    bench = new BenchViewModel(room.place());
    BenchView view =
        new BenchView(
            bench, room.place().words(), room.place().numbers(), () -> time.addAndGet(step));
    view.fallingLine().motionProperty().set(false);
    view.setWhichBone(org.comparanda.tables.ReferenceTables.shipped().whichBone());
    AppFrame frame =
        new AppFrame(
            List.of(new Screen("bench", () -> view)), new Look(), Words.of("app", Locale.ENGLISH));
    stage.setScene(frame.scene(1366, 768));
    stage.show();
  }

  @AfterEach
  void close() {
    room.close();
  }

  @Test
  void aBoneIsMeasuredTwiceAnsweredAndCalled(FxRobot robot) {
    robot.clickOn("Fresh tray");
    robot.clickOn("#state-keys"); // its state: all fine
    for (int pass = 1; pass <= 2; pass++) {
      for (String value : List.of("15.8", "32.7", "30.2", "14.9")) {
        type(robot, value);
      }
    }
    assertEquals(8, room.collection().readings().of(new BoneId("N-1")).size());
    String answer = robot.lookup("#answer").query().lookup(".sentence").getAccessibleText();
    assertTrue(answer.startsWith("Fits a few"), answer);
    robot.interact(() -> bench.call().taxonProperty().set("Ovis aries"));
    robot.clickOn("#record");
    assertEquals(1, room.collection().trays().callsOn(new BoneId("N-1")).size());
  }

  @Test
  void reasonsStandInPlaceOfThePictureWithTheTrialOfThisSet(FxRobot robot) {
    robot.interact(() -> DemoBench.choose(bench, "hard", "K-202"));
    WaitForAsyncUtils.waitForFxEvents();
    robot.press(KeyCode.F2).release(KeyCode.F2);
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(robot.lookup("#hit-table").tryQuery().isPresent(), "the answer does not wait");
    robot.interact(room::idle);
    Finding finding = bench.findingProperty().get().orElseThrow();
    Trial trial = bench.afterwardsProperty().get().trial().orElseThrow();
    assertEquals(finding.suggestion().measurements(), trial.measurements());
    assertTrue(robot.lookup("#reasons").query().isVisible());
    javafx.scene.layout.GridPane table = robot.lookup("#hit-table").query();
    // a row of heads, then a row for every taxon of the trial
    assertEquals(trial.taxa().size() + 1, table.getRowCount());
    javafx.scene.layout.GridPane methods = robot.lookup("#methods-table").query();
    assertEquals(Method.values().length, methods.getRowCount(), "a head, all methods but auto");
    robot.press(KeyCode.F2).release(KeyCode.F2);
    assertFalse(robot.lookup("#reasons").query().isVisible());
  }

  @Test
  void stopAsksOnceAndSetsTheBoneAside(FxRobot robot) {
    robot.interact(() -> DemoBench.choose(bench, "hard", "K-202"));
    WaitForAsyncUtils.waitForFxEvents();
    robot.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.H);
    robot.release(KeyCode.H, KeyCode.SHIFT, KeyCode.CONTROL);
    assertTrue(robot.lookup("#stop-question").tryQuery().isPresent());
    robot.clickOn("#stop-yes");
    assertTrue(robot.lookup("#stop-aside").tryQuery().isPresent());
    assertFalse(robot.lookup("#nearest").tryQuery().isPresent());
    assertEquals(
        TrayBone.Standing.STOPPED,
        room.collection().trays().bone(new BoneId("K-202")).orElseThrow().standing());
  }

  @Test
  void theNumberPadAnswersTheStopQuestion(FxRobot robot) {
    robot.interact(() -> DemoBench.choose(bench, "hard", "K-202"));
    WaitForAsyncUtils.waitForFxEvents();
    robot.write("---");
    until(() -> robot.lookup("#stop-question").tryQuery().isPresent());
    robot.write("2");
    until(() -> robot.lookup("#stop-question").tryQuery().isEmpty());
    robot.write("---");
    until(() -> robot.lookup("#stop-question").tryQuery().isPresent());
    robot.write("1");
    until(() -> robot.lookup("#stop-aside").tryQuery().isPresent());
  }

  @Test
  void aCaliperChoosesNothingAndAnswersNothing(FxRobot robot) {
    step = CALIPER;
    robot.write("151.2\n"); // while trays wait to be chosen
    quiet();
    assertTrue(bench.boneProperty().get().isEmpty());
    robot.interact(() -> DemoBench.choose(bench, "hard", "K-202"));
    WaitForAsyncUtils.waitForFxEvents();
    int before = room.collection().readings().of(new BoneId("K-202")).size();
    robot.push(KeyCode.F4);
    WaitForAsyncUtils.waitForFxEvents();
    robot.write("111.2 mm\n"); // 1, 1, 1 would be a femur
    quiet();
    assertTrue(robot.lookup("#which-bone").tryQuery().isPresent());
    assertEquals("humerus", bench.boneProperty().get().orElseThrow().element().value());
    robot.push(KeyCode.ESCAPE);
    robot.interact(() -> bench.askStop());
    WaitForAsyncUtils.waitForFxEvents();
    robot.write("12.3 mm\n");
    quiet();
    assertTrue(robot.lookup("#stop-question").tryQuery().isPresent());
    assertEquals(before, room.collection().readings().of(new BoneId("K-202")).size());
  }

  /** Longer than a burst's pause, in the window's own time. */
  private static void quiet() {
    WaitForAsyncUtils.waitForFxEvents();
    CountDownLatch over = new CountDownLatch(1);
    PauseTransition pause =
        new PauseTransition(Duration.millis(3.0 * BurstDetector.PAUSE.toMillis()));
    pause.setOnFinished(event -> over.countDown());
    Platform.runLater(pause::play);
    until(() -> over.getCount() == 0);
  }

  private static void until(BooleanSupplier done) {
    try {
      WaitForAsyncUtils.waitFor(5, TimeUnit.SECONDS, done::getAsBoolean);
      WaitForAsyncUtils.waitForFxEvents();
    } catch (TimeoutException e) {
      throw new AssertionError("nothing happened", e);
    }
  }

  @Test
  void theKeyFindsTheElementByDigitsAlone(FxRobot robot) {
    robot.interact(() -> DemoBench.choose(bench, "hard", "K-202"));
    WaitForAsyncUtils.waitForFxEvents();
    robot.push(KeyCode.F4);
    WaitForAsyncUtils.waitForFxEvents();
    robot.write("111"); // long, with a round ball, on a neck
    until(() -> robot.lookup("#which-bone").tryQuery().isEmpty());
    assertEquals("femur", bench.boneProperty().get().orElseThrow().element().value());
  }

  @Test
  void theKeyStopsWhereTheBoneCouldBeHuman(FxRobot robot) {
    robot.interact(() -> DemoBench.choose(bench, "hard", "K-202"));
    WaitForAsyncUtils.waitForFxEvents();
    robot.push(KeyCode.F4);
    WaitForAsyncUtils.waitForFxEvents();
    robot.write("7"); // smooth, thin and bowl-shaped
    until(() -> robot.lookup("#which-stop").tryQuery().isPresent());
    robot.push(KeyCode.ENTER); // the STOP button has the focus
    until(() -> robot.lookup("#stop-question").tryQuery().isPresent());
  }

  @Test
  void everyControlHasAName(FxRobot robot) {
    robot.interact(() -> DemoBench.choose(bench, "hard", "K-202"));
    List<String> unnamed =
        robot
            .lookup((Node node) -> node instanceof Control && node.isFocusTraversable())
            .queryAll()
            .stream()
            .filter(node -> name(node).isBlank())
            .map(Node::toString)
            .toList();
    assertEquals(List.of(), unnamed);
  }

  private static String name(Node node) {
    if (node.getAccessibleText() != null) {
      return node.getAccessibleText();
    }
    return node instanceof Labeled labeled ? labeled.getText() : "";
  }

  /** The last key is known to be a hand's when nothing came after it for a while. */
  private void type(FxRobot robot, String value) {
    robot.interact(() -> robot.lookup("#reading").query().requestFocus());
    int before = room.collection().readings().of(new BoneId("N-1")).size();
    robot.write(value);
    robot.type(KeyCode.ENTER);
    try {
      WaitForAsyncUtils.waitFor(
          5,
          TimeUnit.SECONDS,
          () -> room.collection().readings().of(new BoneId("N-1")).size() == before + 1);
    } catch (TimeoutException e) {
      throw new AssertionError(
          value + " was not taken: " + bench.readings().messageProperty().get(), e);
    }
  }
}
