package org.comparanda.gui.app;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.control.Alert;
import javafx.scene.control.TextArea;
import javafx.stage.Stage;
import org.comparanda.gui.text.Words;
import org.comparanda.storage.Collection;
import org.comparanda.storage.DataFolder;
import org.comparanda.tables.ReferenceTables;
import org.jspecify.annotations.Nullable;

/** The program with a window: makes the threads, opens the collection, shows the frame. */
public final class Desktop extends Application {
  private static final double WIDTH = 1366;
  private static final double HEIGHT = 768;

  private @Nullable ExecutorService work;
  private @Nullable Collection collection;

  @Override
  public void start(Stage stage) {
    Locale locale = Locale.getDefault();
    Words words = Words.of("app", locale);
    Mishaps mishaps = new Mishaps(words, Platform::runLater, Desktop::show);
    Thread.currentThread().setUncaughtExceptionHandler(mishaps);
    ExecutorService background = background(mishaps);
    work = background;
    // Not in here but after it, so that a collection that can't be opened reaches the one handler.
    Platform.runLater(() -> open(stage, words, locale, background));
  }

  private void open(Stage stage, Words words, Locale locale, ExecutorService background) {
    Clock clock = Clock.systemUTC();
    Look look = new Look();
    new RememberedLook(dataFolder()).follow(look);
    ReferenceTables tables = ReferenceTables.shipped();
    Collection opened = DemoRoom.open(dataFolder(), tables, clock);
    collection = opened;
    Workplace place =
        new Workplace(background, Platform::runLater, locale, clock, look, tables, opened);
    AppFrame frame = new AppFrame(Screens.of(place), look, words);
    stage.setTitle(words.get("window.title"));
    stage.setScene(frame.scene(WIDTH, HEIGHT));
    stage.setMinWidth(1024);
    stage.setMinHeight(640);
    stage.show();
  }

  @Override
  public void stop() {
    if (work != null) {
      work.shutdownNow();
    }
    if (collection != null) {
      collection.close();
    }
  }

  private static Path dataFolder() {
    return DataFolder.of(Launcher.systemProperties(), System.getenv());
  }

  private static ExecutorService background(Thread.UncaughtExceptionHandler mishaps) {
    return Executors.newSingleThreadExecutor(
        task -> {
          Thread thread = new Thread(task, "work");
          thread.setDaemon(true);
          thread.setUncaughtExceptionHandler(mishaps);
          return thread;
        });
  }

  private static void show(String message, String account) {
    Alert alert = new Alert(Alert.AlertType.ERROR, message);
    alert.setHeaderText(null);
    TextArea full = new TextArea(account);
    full.setEditable(false);
    alert.getDialogPane().setExpandableContent(full);
    alert.show();
  }
}
