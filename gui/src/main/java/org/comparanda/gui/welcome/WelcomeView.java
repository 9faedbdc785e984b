package org.comparanda.gui.welcome;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.comparanda.gui.caliper.Answering;
import org.comparanda.gui.caliper.LessonCard;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.gui.text.Words;

/** One card with one question at a time. */
public final class WelcomeView extends StackPane {
  private final WelcomeViewModel welcome;
  private final Words words;
  private final Words caliperWords;
  private final LongSupplier nanos;
  private final Supplier<Optional<Path>> newFile;
  private final Supplier<Optional<Path>> oldFile;

  /**
   * @param newFile asks for the place of a new collection
   * @param oldFile asks for a collection that is there
   */
  public WelcomeView(
      WelcomeViewModel welcome,
      Words words,
      Words caliperWords,
      LongSupplier nanos,
      Supplier<Optional<Path>> newFile,
      Supplier<Optional<Path>> oldFile) {
    this.welcome = welcome;
    this.words = words;
    this.caliperWords = caliperWords;
    this.nanos = nanos;
    this.newFile = newFile;
    this.oldFile = oldFile;
    setId("welcome-screen");
    getStyleClass().addAll("frame", "screen", "welcome-screen");
    welcome.stepProperty().addListener((o, was, is) -> show());
    show();
  }

  private void show() {
    WelcomeViewModel.Step step = welcome.stepProperty().get();
    Label count =
        new Label(
            words.get("welcome.step", List.of(WelcomeViewModel.Step.values()).indexOf(step) + 1));
    count.getStyleClass().add("note");
    Label message = new WrappedLabel("", "notice");
    message.setId("welcome-message");
    message.textProperty().bind(welcome.messageProperty());
    message.visibleProperty().bind(message.textProperty().isNotEmpty());
    message.managedProperty().bind(message.visibleProperty());
    VBox card = new VBox(count, new WrappedLabel(words.get("welcome." + step), "answer"));
    card.getChildren().add(new WrappedLabel(words.get("welcome." + step + ".what"), "small"));
    Node first =
        switch (step) {
          case WHO -> who(card);
          case COLLECTION -> collection(card);
          case CALIPER -> caliper(card);
        };
    card.getChildren().add(message);
    card.setId("welcome-card");
    card.getStyleClass().addAll("card", "stop-card", "question-card");
    StackPane place = new StackPane(card);
    ScrollPane scroll = new ScrollPane(place);
    scroll.setFitToWidth(true);
    scroll.setFitToHeight(true);
    scroll.getStyleClass().add("plain-scroll");
    getChildren().setAll(scroll);
    Platform.runLater(first::requestFocus);
  }

  private Node who(VBox card) {
    TextField name = new TextField();
    name.setId("welcome-name");
    name.setAccessibleText(words.get("welcome.WHO"));
    name.setPromptText(words.get("who.prompt"));
    name.textProperty().bindBidirectional(welcome.nameProperty());
    name.setOnAction(event -> welcome.named());
    Button next = button("welcome-next", words.get("welcome.next"), "record");
    next.setOnAction(event -> welcome.named());
    card.getChildren().addAll(name, next);
    return name;
  }

  private Node collection(VBox card) {
    Button demo = numbered(1, "welcome-demo", "collection.demo");
    demo.setOnAction(event -> welcome.demo());
    Button fresh = numbered(2, "welcome-new", "collection.new");
    fresh.setOnAction(event -> newFile.get().ifPresent(welcome::create));
    Button open = numbered(3, "welcome-open", "collection.open");
    open.setOnAction(event -> oldFile.get().ifPresent(welcome::open));
    List<Button> all = List.of(demo, fresh, open);
    FlowPane buttons = new FlowPane(demo, fresh, open);
    buttons.getStyleClass().add("welcome-trays");
    Answering.on(
        buttons,
        nanos,
        key -> {
          int number = "123".indexOf(key);
          if (number >= 0) {
            all.get(number).fire();
          }
        });
    card.getChildren().add(buttons);
    return demo;
  }

  private Node caliper(VBox card) {
    Button skip = button("welcome-skip", words.get("caliper.skip"), "quiet");
    skip.setOnAction(event -> welcome.finish());
    card.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            event.consume();
            welcome.finish();
          }
        });
    Optional<LessonCard> lesson =
        welcome.lesson().map(model -> new LessonCard(model, caliperWords, nanos, welcome::learned));
    lesson.ifPresent(card.getChildren()::add);
    card.getChildren().add(skip);
    return lesson.<Node>map(LessonCard::hears).orElse(skip);
  }

  private Button numbered(int number, String id, String key) {
    Button button = button(id, words.get(key), "tray-button");
    Label sign = new Label(Integer.toString(number));
    sign.getStyleClass().add("key");
    button.setGraphic(sign);
    return button;
  }

  private static Button button(String id, String text, String style) {
    Button button = new Button(text);
    button.setId(id);
    button.getStyleClass().setAll(style);
    return button;
  }
}
