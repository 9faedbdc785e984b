package org.comparanda.gui.capture;

import java.util.function.LongSupplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.caliper.Listening;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.gui.text.Words;

/** A question over the bench: what is asked, the numbered answers, the digits typed so far. */
public final class QuestionCard extends VBox implements Listening.Ear {
  private final ReadingsViewModel readings;
  private final Button typed = new Button();

  public QuestionCard(
      ReadingsViewModel readings,
      QuestionViewModel asked,
      Question question,
      Words words,
      LongSupplier nanos) {
    this.readings = readings;
    setId("question");
    getStyleClass().addAll("card", "stop-card", "question-card");
    typed.setId("question-keys");
    typed.getStyleClass().setAll("question-field");
    typed.setAccessibleText(question.title());
    typed.setAccessibleHelp(question.explained());
    typed.setOnAction(event -> readings.pressed(NamedKey.ENTER));
    typed.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    new Listening(typed, nanos, this);
    Label refusal = new WrappedLabel("", "notice");
    refusal.setId("question-refusal");
    refusal.textProperty().bind(asked.refusalProperty());
    refusal.visibleProperty().bind(refusal.textProperty().isNotEmpty());
    refusal.managedProperty().bind(refusal.visibleProperty());
    typed
        .textProperty()
        .bind(
            readings
                .fieldProperty()
                .map(field -> field.text().isEmpty() ? words.get("question.type") : field.text()));
    HBox answer = new HBox(typed);
    answer.getStyleClass().add("stop-buttons");
    getChildren()
        .addAll(
            new WrappedLabel(question.title(), "answer"),
            new WrappedLabel(question.explained(), "small"),
            answer,
            refusal);
    if (!question.choices().isEmpty()) {
      getChildren().add(choices(question));
    }
  }

  /** Where the number pad answers. */
  Button keys() {
    return typed;
  }

  private FlowPane choices(Question question) {
    FlowPane all = new FlowPane();
    all.getStyleClass().add("question-choices");
    for (Question.Choice choice : question.choices()) {
      Button button = new Button(choice.text());
      Label key = new Label(choice.number());
      key.getStyleClass().add("key");
      button.setGraphic(key);
      button.getStyleClass().setAll("tray-button", "question-choice");
      button.setId("choice-" + choice.number());
      button.setFocusTraversable(false);
      button.setOnAction(event -> choose(choice.number()));
      all.getChildren().add(button);
    }
    return all;
  }

  private void choose(String number) {
    number.chars().forEach(c -> readings.typed((char) c));
    readings.pressed(NamedKey.ENTER);
  }

  @Override
  public void hand(char character) {
    if (character == '\n') {
      readings.pressed(NamedKey.ENTER);
    } else {
      readings.typed(character);
    }
  }

  @Override
  public void burst(String text) {
    readings.burst(text);
  }

  private void pressed(KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE) {
      event.consume();
      readings.pressed(NamedKey.ESCAPE);
    } else if (event.getCode() == KeyCode.BACK_SPACE) {
      event.consume();
      readings.pressed(NamedKey.BACKSPACE);
    }
  }
}
