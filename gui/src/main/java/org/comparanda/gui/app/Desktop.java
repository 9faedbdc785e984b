package org.comparanda.gui.app;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.comparanda.gui.capture.Memory;
import org.comparanda.gui.text.Words;
import org.comparanda.gui.welcome.WelcomeView;
import org.comparanda.gui.welcome.WelcomeViewModel;
import org.comparanda.statistics.Outcome;
import org.comparanda.storage.Collection;
import org.comparanda.storage.DataFolder;
import org.comparanda.tables.ReferenceTables;
import org.jspecify.annotations.Nullable;

/** The program with a window: makes the threads, opens the collection, shows the frame. */
public final class Desktop extends Application {
  private static final double WIDTH = 1366;
  private static final double HEIGHT = 768;

  private @Nullable ExecutorService work;
  private @Nullable ExecutorService idle;
  private @Nullable Doorway doorway;

  @Override
  public void start(Stage stage) {
    Locale locale = Locale.getDefault();
    Words words = Words.of("app", locale);
    Look look = new Look();
    Mishaps mishaps =
        new Mishaps(
            words,
            Platform::runLater,
            (message, account) -> MishapDialog.of(message, account, look, words).show());
    Thread.currentThread().setUncaughtExceptionHandler(mishaps);
    ExecutorService background = background("work", mishaps);
    work = background;
    ExecutorService waiting = background("idle", mishaps);
    idle = waiting;
    // Not in here but after it, so that a collection that can't be opened reaches the one handler.
    Platform.runLater(() -> open(stage, look, words, locale, background, waiting));
  }

  private void open(
      Stage stage,
      Look look,
      Words words,
      Locale locale,
      ExecutorService background,
      ExecutorService waiting) {
    Clock clock = Clock.systemUTC();
    new RememberedLook(dataFolder()).follow(look);
    ReferenceTables tables = ReferenceTables.shipped(locale);
    Memory memory = new RememberedThings(dataFolder());
    Doorway doors = new Doorway(dataFolder(), tables, clock, memory);
    doorway = doors;
    Consumer<Collection> inside =
        collection ->
            show(
                stage,
                words,
                new Workplace(
                    background,
                    waiting,
                    Platform::runLater,
                    locale,
                    clock,
                    look,
                    tables,
                    collection,
                    memory));
    Outcome<?> before = doors.asBefore();
    doors
        .collection()
        .ifPresentOrElse(
            inside,
            () ->
                welcome(
                    stage,
                    look,
                    locale,
                    new WelcomeViewModel(
                        doors,
                        clock,
                        Words.of("welcome", locale),
                        Words.of("caliper", locale),
                        name -> {
                          doors.sits(name);
                          doors.collection().ifPresent(inside);
                        }),
                    before.fold(ok -> "", none -> words.said(none.reason()))));
    stage.setTitle(words.get("window.title"));
    stage.setMinWidth(1024);
    stage.setMinHeight(640);
    stage.show();
  }

  private static void welcome(
      Stage stage, Look look, Locale locale, WelcomeViewModel welcome, String trouble) {
    Words words = Words.of("welcome", locale);
    welcome.messageProperty().set(trouble);
    WelcomeView view =
        new WelcomeView(
            welcome,
            words,
            Words.of("caliper", locale),
            System::nanoTime,
            new CollectionDialog(CollectionDialog.Kind.NEW, words.get("file.new")),
            new CollectionDialog(CollectionDialog.Kind.THERE, ""));
    Scene scene = new Scene(view, WIDTH, HEIGHT);
    look.dress(scene);
    stage.setScene(scene);
  }

  private static void show(Stage stage, Words words, Workplace place) {
    AppFrame frame = new AppFrame(Screens.of(place), place.look(), words);
    frame.rail().demoNote(Simulated.of(place.collection()));
    stage.setScene(frame.scene(WIDTH, HEIGHT));
  }

  @Override
  public void stop() {
    if (work != null) {
      work.shutdownNow();
    }
    if (idle != null) {
      idle.shutdownNow();
    }
    if (doorway != null) {
      doorway.close();
    }
  }

  private static Path dataFolder() {
    return DataFolder.of(Launcher.systemProperties(), System.getenv());
  }

  private static ExecutorService background(String name, Thread.UncaughtExceptionHandler mishaps) {
    return Executors.newSingleThreadExecutor(
        task -> {
          Thread thread = new Thread(task, name);
          thread.setDaemon(true);
          thread.setUncaughtExceptionHandler(mishaps);
          return thread;
        });
  }
}
