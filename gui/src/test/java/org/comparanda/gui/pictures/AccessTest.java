package org.comparanda.gui.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
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

/**
 * Every screen of the rail, as it opens and in every state of {@link Poses}: each control has a
 * name, Tab comes round, no text is cut at 150 %, text and marks stand out, no colour is foreign. A
 * new screen is looked at as soon as it is in {@link Screens}, a new state as soon as it is a pose.
 * The ordinary build takes the first pose of each screen, {@code -Dproof.size=full} takes all.
 */
@ExtendWith(ApplicationExtension.class)
class AccessTest {
  private Stage stage;

  @Start
  void open(Stage opened) {
    stage = opened;
  }

  private record Case(String name, String screen, Pose.Shelf shelf, Consumer<Scene> take) {}

  @TestFactory
  List<DynamicTest> everyScreenInEveryStateIsAccessible(FxRobot robot) throws IOException {
    ReferenceTables tables = ReferenceTables.shipped();
    Function<Pose.Shelf, Collection> collections = DemoCollection.all(tables);
    List<Case> cases = new ArrayList<>();
    screens(new Look(), tables, collections.apply(Pose.Shelf.DEMO))
        .forEach(s -> cases.add(new Case(s.key(), s.key(), Pose.Shelf.DEMO, scene -> {})));
    boolean full = System.getProperty("proof.size", "").equals("full");
    Set<String> seen = new LinkedHashSet<>();
    Poses.all().stream()
        .filter(p -> !p.screen().equals("welcome")) // no screen of the rail
        .filter(p -> full || (!p.state().equals("empty") && seen.add(p.screen())))
        .forEach(
            p ->
                cases.add(new Case(p.screen() + " " + p.state(), p.screen(), p.shelf(), p.take())));
    return cases.stream()
        .filter(c -> c.name().startsWith(System.getProperty("screen", "")))
        .map(
            c ->
                DynamicTest.dynamicTest(
                    c.name(), () -> look(robot, c, tables, collections.apply(c.shelf()))))
        .toList();
  }

  private void look(FxRobot robot, Case state, ReferenceTables tables, Collection collection) {
    List<String> faults = new ArrayList<>();
    Look look = new Look();
    robot.interact(() -> stand(state, look, tables, collection));
    robot.interact(() -> faults.addAll(new Seen(stage.getScene()).unnamed()));
    faults.addAll(trap(robot));
    for (Theme theme : Theme.values()) {
      robot.interact(() -> look.themeProperty().set(theme));
      robot.interact(() -> colours(theme, faults));
    }
    robot.interact(() -> look.textPercentProperty().set(150));
    robot.interact(() -> stage.getScene().getRoot().layout());
    robot.interact(() -> faults.addAll(new Seen(stage.getScene()).cut()));
    assertEquals(List.of(), faults);
  }

  private void colours(Theme theme, List<String> faults) {
    Seen seen = new Seen(stage.getScene());
    stage.getScene().getRoot().applyCss();
    seen.faint().forEach(fault -> faults.add(theme + " " + fault));
    seen.foreignBlue().forEach(fault -> faults.add(theme + " " + fault));
  }

  /** Tab comes round past every control; of a group of toggles it takes the chosen one. */
  private List<String> trap(FxRobot robot) {
    List<Node> reachable = new ArrayList<>();
    robot.interact(() -> reachable.addAll(new Seen(stage.getScene()).reachable()));
    assertTrue(!reachable.isEmpty(), "nothing to reach by key");
    robot.interact(reachable.get(0)::requestFocus);
    Set<Node> visited = new LinkedHashSet<>();
    while (visited.add(stage.getScene().getFocusOwner()) && visited.size() < 300) {
      robot.push(KeyCode.TAB);
    }
    return reachable.stream()
        .filter(n -> !visited.contains(n))
        .filter(n -> !(n instanceof ToggleButton t && t.getToggleGroup() != null))
        .map(n -> "Tab does not reach " + Seen.said(n))
        .toList();
  }

  private void stand(Case state, Look look, ReferenceTables tables, Collection collection) {
    look.motionProperty().set(false);
    List<Screen> screens = screens(look, tables, collection);
    AppFrame frame = new AppFrame(screens, look, Words.of("app", Locale.ENGLISH));
    Scene scene = frame.scene(1366, 768);
    stage.setScene(scene);
    stage.show();
    frame.open(state.screen());
    frame.applyCss();
    frame.layout();
    state.take().accept(scene);
  }

  private static List<Screen> screens(Look look, ReferenceTables tables, Collection collection) {
    return Screens.of(
        new Workplace(
            Runnable::run,
            Runnable::run,
            Locale.ENGLISH,
            DemoCollection.CLOCK,
            look,
            tables,
            collection,
            new NoMemory()));
  }
}
