package org.comparanda.gui.bench;

import java.util.function.LongSupplier;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.gui.caliper.Answering;
import org.comparanda.gui.text.Words;
import org.comparanda.tray.Tray;

/** What the bench shows while no bone is in hand: what to do, and it is done by one key. */
final class EmptyBench {
  private final BenchViewModel bench;
  private final Words words;
  private final LongSupplier nanos;

  /**
   * @param nanos a clock that only goes forward, for telling a caliper from a hand
   */
  EmptyBench(BenchViewModel bench, Words words, LongSupplier nanos) {
    this.bench = bench;
    this.words = words;
    this.nanos = nanos;
  }

  /** The card for where the bench stands. */
  VBox card() {
    boolean trayThere = bench.trayProperty().get().isPresent();
    VBox card = trayThere ? emptyTray() : bench.trays().isEmpty() ? noTray() : trays();
    card.getStyleClass().addAll("card", "stop-card");
    return card;
  }

  private VBox trays() {
    FlowPane trays = new FlowPane();
    trays.getStyleClass().add("welcome-trays");
    for (Tray tray : bench.trays()) {
      trays.getChildren().add(button(tray, trays.getChildren().size() + 1));
    }
    Answering.on(trays, nanos, this::numbered);
    Platform.runLater(() -> trays.getChildren().get(0).requestFocus());
    VBox card = new VBox(title("empty.title"), wrapped("empty.what"), trays);
    card.setId("welcome");
    return card;
  }

  private VBox noTray() {
    Button make = onEnter("first-tray", "empty.none.make", bench::firstTray);
    VBox card = new VBox(title("empty.none"), wrapped("empty.none.what"), make);
    card.setId("no-tray");
    return card;
  }

  /** A tray without bones: its first one is put there. */
  private VBox emptyTray() {
    Button first = onEnter("first-bone", "first.bone", bench.errands()::firstBone);
    VBox card = new VBox(wrapped("first.what"), first);
    card.setId("empty-tray");
    return card;
  }

  private Button onEnter(String id, String key, Runnable action) {
    Button button = new Button(words.get(key));
    button.setId(id);
    button.getStyleClass().setAll("record");
    button.setOnAction(event -> action.run());
    Answering.on(button, nanos, typed -> {});
    Platform.runLater(button::requestFocus);
    return button;
  }

  private Button button(Tray tray, int number) {
    Button button = new Button(tray.name());
    button.getStyleClass().setAll("tray-button");
    if (number <= 9) {
      Label key = new Label(Integer.toString(number));
      key.getStyleClass().add("key");
      button.setGraphic(key);
    }
    button.setOnAction(event -> bench.choose(tray));
    return button;
  }

  /** A digit chooses the tray of that number. */
  private void numbered(int digit) {
    int number = "123456789".indexOf(digit);
    if (number >= 0 && number < bench.trays().size()) {
      bench.choose(bench.trays().get(number));
    }
  }

  private Label title(String key) {
    Label title = new Label(words.get(key));
    title.getStyleClass().add("answer");
    return title;
  }

  private Label wrapped(String key) {
    Label label = new Label(words.get(key));
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
