package org.comparanda.gui.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.comparanda.gui.app.Look;
import org.comparanda.gui.app.Screens;
import org.comparanda.gui.app.Theme;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/**
 * Every screen of the rail, as it opens and in every state of {@link Poses}: each control has a
 * name, Tab comes round and shows where it is, no text is cut at 150 % (in full size 200 %, too),
 * text and marks stand out, painted ones too, no colour is foreign. A new screen is looked at as
 * soon as it is in {@link Screens}, a new state as soon as it is a pose. The ordinary build takes
 * the first pose of each screen, {@code -Dproof.size=full} takes all.
 */
@ExtendWith(ApplicationExtension.class)
class AccessTest {
  private static final List<Integer> SIZES =
      System.getProperty("proof.size", "").equals("full") ? List.of(150, 200) : List.of(150);

  private Stage stage;

  @Start
  void open(Stage opened) {
    stage = opened;
  }

  @TestFactory
  List<DynamicTest> everyScreenInEveryStateIsAccessible(FxRobot robot) {
    Stand stand = Stand.in(Locale.ENGLISH);
    return stand.cases().stream()
        .map(c -> DynamicTest.dynamicTest(c.name(), () -> look(robot, c, stand)))
        .toList();
  }

  private void look(FxRobot robot, Stand.Case state, Stand stand) {
    List<String> faults = new ArrayList<>();
    Look look = new Look();
    robot.interact(() -> stand.on(stage, state, look));
    robot.interact(() -> Seen.all().forEach(seen -> faults.addAll(seen.unnamed())));
    if (Seen.all().size() == 1) { // a list that is open takes the keys until it is closed
      faults.addAll(trap(robot));
    }
    for (Theme theme : Theme.values()) {
      robot.interact(() -> look.themeProperty().set(theme));
      robot.interact(() -> colours(theme, faults));
    }
    for (int percent : SIZES) {
      robot.interact(() -> look.textPercentProperty().set(percent));
      robot.interact(() -> stage.getScene().getRoot().layout());
      robot.interact(
          () -> Seen.all().forEach(s -> s.cut().forEach(f -> faults.add(percent + " % " + f))));
    }
    robot.interact(() -> Seen.closeAllBut(stage));
    assertEquals("", String.join("\n", faults));
  }

  private void colours(Theme theme, List<String> faults) {
    for (Seen seen : Seen.all()) {
      seen.scene().getRoot().applyCss();
      seen.faint().forEach(fault -> faults.add(theme + " " + fault));
      seen.foreignBlue().forEach(fault -> faults.add(theme + " " + fault));
      seen.painted().forEach(fault -> faults.add(theme + " " + fault));
    }
  }

  /** Tab comes round past every control; of a group of toggles it takes the chosen one. */
  private List<String> trap(FxRobot robot) {
    List<Node> reachable = new ArrayList<>();
    robot.interact(() -> reachable.addAll(new Seen(stage.getScene()).reachable()));
    assertTrue(!reachable.isEmpty(), "nothing to reach by key");
    robot.interact(reachable.get(0)::requestFocus);
    List<String> faults = new ArrayList<>();
    Set<Node> visited = new LinkedHashSet<>();
    robot.push(KeyCode.TAB); // from here on the focus has come by key, as a ring may show only then
    while (visited.add(stage.getScene().getFocusOwner()) && visited.size() < 300) {
      faults.addAll(unseenFocus(robot, stage.getScene().getFocusOwner()));
    }
    reachable.stream()
        .filter(n -> !visited.contains(n))
        .filter(n -> !(n instanceof ToggleButton t && t.getToggleGroup() != null))
        .map(n -> "Tab does not reach " + Seen.said(n))
        .forEach(faults::add);
    return faults;
  }

  /** Goes on by Tab, and says so if the control looked no different while it had the focus. */
  private List<String> unseenFocus(FxRobot robot, Node focused) {
    FocusSeen seen = new FocusSeen(stage.getScene());
    List<WritableImage> looks = new ArrayList<>();
    robot.interact(() -> seen.look(focused).ifPresent(looks::add));
    robot.push(KeyCode.TAB);
    robot.interact(() -> seen.look(focused).ifPresent(looks::add));
    boolean moved = stage.getScene().getFocusOwner() != focused;
    return moved && looks.size() == 2 && !FocusSeen.differ(looks.get(0), looks.get(1))
        ? List.of("focus is not seen on " + Seen.said(focused))
        : List.of();
  }
}
