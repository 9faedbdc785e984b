package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.gui.app.AppFrame;
import org.comparanda.gui.app.Look;
import org.comparanda.gui.app.Screen;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Reading;
import org.comparanda.tray.Call;
import org.comparanda.tray.TrayBone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/**
 * One bone from the closed program to the recorded call, by keyboard alone, in a window of the real
 * toolkit. Keystrokes beyond digits and decimal marks are counted; docs/usability.md names them.
 */
@ExtendWith(ApplicationExtension.class)
class BenchWalkTest {
  private static final long SLOW_HAND = 100_000_000; // 100 ms from key to key, in nanoseconds
  private static final BoneId BONE = new BoneId("N-1");

  private final AtomicLong time = new AtomicLong();
  private DemoBench room;
  private BenchViewModel bench;
  private int keystrokes;

  @Start
  void open(Stage stage) throws IOException {
    room = DemoBench.in(Files.createTempDirectory("walk"), Runnable::run);
    TrayBone fragment = room.collection().trays().bone(BONE).orElseThrow();
    room.collection().trays().save(whole(fragment));
    bench = new BenchViewModel(room.place());
    BenchView view =
        new BenchView(
            bench, room.place().words(), room.place().numbers(), () -> time.addAndGet(SLOW_HAND));
    view.fallingLine().motionProperty().set(false);
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
  void aHumerusIsMeasuredTwiceCalledAndItsSlipSavedInAtMost25Keystrokes(FxRobot robot) {
    robot.write("5"); // the fifth tray, by its number
    until(() -> bench.state().questionsProperty().get().isPresent());
    press(robot, KeyCode.ENTER); // its state: all fine
    until(() -> bench.state().questionsProperty().get().isEmpty());
    for (String value : List.of("151.2", "138.6", "16.8", "33.2", "30.8")) {
      read(robot, value);
    }
    notPossible(robot);
    for (String value : List.of("151.0", "138.4", "16.9", "33.1", "30.7")) {
      read(robot, value);
    }
    String answer = robot.lookup("#answer").query().lookup(".sentence").getAccessibleText();
    assertTrue(answer.startsWith("Fits a few"), answer);
    press(robot, KeyCode.PLUS); // record the call: its taxon is missing, so the focus goes there
    until(() -> robot.lookup("#taxon-text").query().isFocused());
    press(robot, KeyCode.DOWN); // the first candidate
    until(() -> !bench.call().taxonProperty().get().isBlank());
    press(robot, KeyCode.ENTER); // on to the button
    until(() -> robot.lookup("#record").query().isFocused());
    press(robot, KeyCode.ENTER); // record
    until(() -> !room.collection().trays().callsOn(BONE).isEmpty());

    until(() -> robot.lookup("#reading").query().isFocused());
    robot.write("07"); // the slip
    press(robot, KeyCode.ENTER);
    until(() -> room.printed().equals(List.of("N-1")));

    Call call = room.collection().trays().callsOn(BONE).get(0);
    assertEquals(
        bench.findingProperty().get().orElseThrow().suggestion().candidates().get(0), call.taxon());
    assertEquals(10, taken().stream().filter(r -> r.kind() == Reading.Kind.TAKE).count(), "takes");
    assertEquals(Fusion.FUSED, room.collection().trays().bone(BONE).orElseThrow().state().distal());
    assertTrue(keystrokes <= 25, "keystrokes: " + keystrokes);
    assertEquals(17, keystrokes, "docs/usability.md says 17");
  }

  private void read(FxRobot robot, String value) {
    int before = taken().size();
    robot.write(value);
    press(robot, KeyCode.ENTER);
    until(() -> taken().size() == before + 1);
  }

  private void notPossible(FxRobot robot) {
    int before = taken().size();
    robot.write("-");
    keystrokes++;
    robot.write("1");
    until(() -> taken().size() == before + 1);
  }

  private List<Reading> taken() {
    return room.collection().readings().of(BONE);
  }

  private void press(FxRobot robot, KeyCode key) {
    if (key == KeyCode.PLUS) {
      robot.write("+");
    } else {
      robot.type(key);
    }
    keystrokes++;
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** The last key is known to be a hand's when nothing came after it for a while. */
  private static void until(BooleanSupplier done) {
    try {
      WaitForAsyncUtils.waitFor(5, TimeUnit.SECONDS, done::getAsBoolean);
      WaitForAsyncUtils.waitForFxEvents();
    } catch (TimeoutException e) {
      throw new AssertionError("nothing happened", e);
    }
  }

  private static TrayBone whole(TrayBone b) {
    return new TrayBone(
        b.id(),
        b.tray(),
        Optional.empty(),
        b.element(),
        b.side(),
        Portion.WHOLE,
        BoneState.notRecorded(),
        b.standing(),
        b.remarks());
  }
}
