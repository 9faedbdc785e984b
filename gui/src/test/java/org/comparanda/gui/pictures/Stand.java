package org.comparanda.gui.pictures;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.comparanda.gui.app.AppFrame;
import org.comparanda.gui.app.Look;
import org.comparanda.gui.app.Screen;
import org.comparanda.gui.app.Screens;
import org.comparanda.gui.app.Workplace;
import org.comparanda.gui.text.Words;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;

/** Puts any screen of the rail on a stage, in any state, in one language. */
record Stand(
    Locale language, ReferenceTables tables, Function<Pose.Shelf, Collection> collections) {
  /** A screen in a state, as a test goes through them. */
  record Case(String name, String screen, Pose.Shelf shelf, Consumer<Scene> take) {}

  static Stand in(Locale language) {
    ReferenceTables tables = ReferenceTables.shipped(language);
    return new Stand(language, tables, DemoCollection.all(tables));
  }

  /**
   * Every screen as it opens and in the states of {@link Poses}: the first state of each, or with
   * {@code -Dproof.size=full} all; {@code -Dscreen=} takes those whose name begins so (a regular
   * expression).
   */
  List<Case> cases() {
    List<Case> cases = new ArrayList<>();
    screens(new Look(), collections.apply(Pose.Shelf.DEMO))
        .forEach(s -> cases.add(new Case(s.key(), s.key(), Pose.Shelf.DEMO, scene -> {})));
    boolean full = System.getProperty("proof.size", "").equals("full");
    Set<String> seen = new LinkedHashSet<>();
    List<Pose> poses = new ArrayList<>(Poses.all());
    if (full) {
      poses.addAll(Keyed.all());
    }
    poses.stream()
        .filter(p -> full || (!p.state().equals("empty") && seen.add(p.screen())))
        .forEach(
            p ->
                cases.add(new Case(p.screen() + " " + p.state(), p.screen(), p.shelf(), p.take())));
    return cases.stream()
        .filter(c -> c.name().matches(System.getProperty("screen", "") + ".*"))
        .toList();
  }

  void on(Stage stage, Case state, Look look) {
    look.motionProperty().set(false);
    if (state.screen().equals("welcome")) { // no screen of the rail
      Scene scene = Welcome.scene(collections.apply(state.shelf()), language, 1366, 768);
      look.dress(scene);
      show(stage, scene, state);
      return;
    }
    List<Screen> screens = screens(look, collections.apply(state.shelf()));
    AppFrame frame = new AppFrame(screens, look, Words.of("app", language));
    Scene scene = frame.scene(1366, 768);
    frame.open(state.screen());
    show(stage, scene, state);
  }

  private static void show(Stage stage, Scene scene, Case state) {
    stage.setScene(scene);
    stage.show();
    scene.getRoot().applyCss();
    scene.getRoot().layout();
    state.take().accept(scene);
  }

  private List<Screen> screens(Look look, Collection collection) {
    return Screens.of(
        new Workplace(
            Runnable::run,
            Runnable::run,
            language,
            DemoCollection.CLOCK,
            look,
            tables,
            collection,
            new NoMemory()));
  }
}
