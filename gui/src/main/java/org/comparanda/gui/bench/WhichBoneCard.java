package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.bone.Portion;
import org.comparanda.bone.WhichBone;
import org.comparanda.gui.caliper.Answering;
import org.comparanda.gui.capture.SketchOf;
import org.comparanda.gui.control.outline.BoneDrawing;
import org.comparanda.gui.control.outline.BoneSketch;
import org.comparanda.gui.text.Words;

/**
 * The key "Which bone is it?" on a card: a question, its choices with drawings, by digit or click.
 */
final class WhichBoneCard extends VBox {
  private final WhichBoneViewModel key;
  private final SketchOf sketches;
  private final Words words;
  private final Runnable stop;
  private final Runnable close;
  private final Label count = new Label();
  private final Label question = new Label();
  private final Label hint = new Label();
  private final FlowPane choices = new FlowPane();
  private final FlowPane ways = new FlowPane();

  /**
   * @param stop asks whether the bone may be human
   * @param nanos a clock that only goes forward, for telling a caliper from a hand
   * @param close puts the card away
   */
  WhichBoneCard(
      WhichBoneViewModel key,
      SketchOf sketches,
      Words words,
      LongSupplier nanos,
      Runnable stop,
      Runnable close) {
    this.key = key;
    this.sketches = sketches;
    this.words = words;
    this.stop = stop;
    this.close = close;
    setId("which-bone");
    getStyleClass().addAll("card", "which-bone");
    count.getStyleClass().add("note");
    question.getStyleClass().add("answer");
    hint.getStyleClass().add("grey");
    for (Label label : List.of(question, hint)) {
      label.setWrapText(true);
      label.setMinHeight(USE_PREF_SIZE);
    }
    choices.getStyleClass().add("which-choices");
    ways.getStyleClass().add("hints");
    getChildren().addAll(count, question, hint, choices, ways);
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    Answering.on(this, nanos, this::typed);
    key.stepProperty().addListener((o, was, is) -> show(is));
    show(key.stepProperty().get());
  }

  private void show(WhichBoneViewModel.Step step) {
    count.setText(words.get("which.count", step.number()));
    choices.getChildren().clear();
    ways.getChildren().clear();
    if (step.number() > 1 || step.stop().isPresent()) {
      ways.getChildren().add(way("which.back", "which-back", key::back));
    }
    if (step.stop().isPresent()) {
      said(step.stop().get());
    } else {
      question.setText(step.question().text());
      hint.setText(step.question().hint());
      int number = 1;
      for (WhichBone.Choice choice : step.question().choices()) {
        choices.getChildren().add(choice(choice, number++));
      }
    }
    ways.getChildren().add(way("which.close", "which-close", close));
    if (getScene() == null) {
      Platform.runLater(this::focusFirst);
    } else {
      // At once: the next digit may already be on its way.
      focusFirst();
    }
  }

  private void focusFirst() {
    Node first =
        choices.getChildren().isEmpty() ? ways.getChildren().get(0) : choices.getChildren().get(0);
    first.requestFocus();
  }

  private void said(WhichBone.Stop leaf) {
    boolean human = leaf.reason() == WhichBone.Reason.MAY_BE_HUMAN;
    question.setText(words.get(human ? "which.human" : "which.ask"));
    hint.setText(leaf.sentence());
    if (human) {
      Button press = new Button(words.get("stop"));
      press.setId("which-stop");
      press.getStyleClass().setAll("stop");
      press.setOnAction(
          event -> {
            close.run();
            stop.run();
          });
      choices.getChildren().add(press);
    }
    ways.getChildren().add(way("which.restart", "which-restart", key::restart));
  }

  private Button choice(WhichBone.Choice choice, int number) {
    Button button = new Button(choice.text());
    button.setId("which-" + number);
    button.getStyleClass().setAll("which-choice");
    button.setWrapText(true);
    button.setAccessibleText(words.get("which.choice", number, choice.text()));
    Label digit = new Label(Integer.toString(number));
    digit.getStyleClass().add("key");
    Optional<BoneSketch> sketch = choice.shows().flatMap(e -> sketches.drawn(e, Portion.WHOLE));
    HBox graphic = new HBox(digit);
    graphic.setAlignment(Pos.TOP_LEFT);
    sketch.ifPresent(s -> graphic.getChildren().add(drawing(s)));
    button.setGraphic(graphic);
    button.setContentDisplay(sketch.isPresent() ? ContentDisplay.TOP : ContentDisplay.LEFT);
    button.setOnAction(event -> key.choose(number));
    return button;
  }

  private static BoneDrawing drawing(BoneSketch sketch) {
    BoneDrawing drawing = new BoneDrawing();
    drawing.getStyleClass().add("which-drawing");
    drawing.sketchProperty().set(Optional.of(sketch));
    return drawing;
  }

  private Button way(String text, String id, Runnable action) {
    Button button = new Button(words.get(text));
    button.setId(id);
    button.getStyleClass().setAll("quiet");
    button.setOnAction(event -> action.run());
    return button;
  }

  private void pressed(KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE) {
      event.consume();
      close.run();
    } else if (event.getCode() == KeyCode.BACK_SPACE) {
      event.consume();
      key.back();
    }
  }

  private void typed(int digit) {
    int number = "123456789".indexOf(digit) + 1;
    if (number > 0) {
      key.choose(number);
    }
  }
}
