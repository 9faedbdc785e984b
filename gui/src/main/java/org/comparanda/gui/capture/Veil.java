package org.comparanda.gui.capture;

import java.util.Optional;
import java.util.function.LongSupplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.comparanda.capture.FieldState;
import org.comparanda.gui.caliper.LessonCard;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.text.Words;

/**
 * What lies over a screen where bones are measured until it is answered: STOP, a question, a
 * caliper to be learned.
 */
public final class Veil extends StackPane {
  private static final String STOP = "stop";
  private static final String LESSON = "lesson";

  private final ReadingsViewModel readings;
  private final QuestionViewModel asked;
  private final CaliperViewModel caliper;
  private final Words words;
  private final Words caliperWords;
  private final LongSupplier nanos;
  private final Runnable lifted;

  /**
   * @param lifted follows when nothing lies over it any more
   */
  public Veil(
      ReadingsViewModel readings,
      QuestionViewModel asked,
      CaliperViewModel caliper,
      Words words,
      LongSupplier nanos,
      Runnable lifted) {
    this.readings = readings;
    this.asked = asked;
    this.caliper = caliper;
    this.words = words;
    caliperWords = Words.of("caliper", words.locale());
    this.nanos = nanos;
    this.lifted = lifted;
    setVisible(false);
    managedProperty().bind(visibleProperty());
    readings.fieldProperty().addListener((o, was, is) -> show());
    asked.questionProperty().addListener((o, was, is) -> show());
    caliper.learningProperty().addListener((o, was, is) -> show());
  }

  private void show() {
    boolean stop = readings.fieldProperty().get().showing() == FieldState.Showing.STOP_QUESTION;
    Optional<Question> question = asked.questionProperty().get();
    if (stop) {
      cover(STOP, () -> new StopQuestion(readings, words, nanos), "#stop-no");
    } else if (question.isPresent()) {
      cover(
          question.get(),
          () -> new QuestionCard(readings, asked, question.get(), words, nanos),
          "#question-keys");
    } else if (caliper.learningProperty().get()) {
      cover(LESSON, this::lesson, "#lesson-hears");
    } else if (getUserData() != null) {
      lift();
    }
  }

  /** Makes a card. */
  private interface Making {
    VBox card();
  }

  /** Shows a card unless it lies there already. */
  private void cover(Object what, Making making, String focus) {
    if (what.equals(getUserData())) {
      return;
    }
    setUserData(what);
    lay(making.card(), focus);
  }

  /** Lays a card over the screen. */
  public void lay(VBox card, String focus) {
    PlainScroll over = new PlainScroll(new StackPane(card));
    over.setFitToHeight(true);
    over.setFocusTraversable(false);
    getChildren().setAll(over);
    getStyleClass().setAll("veil");
    setVisible(true);
    Platform.runLater(
        () -> {
          applyCss(); // a scroll pane has its content in the scene only from then on
          layout();
          Optional.ofNullable(lookup(focus)).ifPresent(Node::requestFocus);
        });
  }

  /** Takes away whatever lies over it. */
  public void lift() {
    setVisible(false);
    getChildren().clear();
    getStyleClass().clear();
    setUserData(null);
    lifted.run();
  }

  private VBox lesson() {
    Label title = new Label(caliperWords.get("lesson.title"));
    title.getStyleClass().add("answer");
    LessonCard lesson =
        new LessonCard(
            caliper.lesson(), caliperWords, nanos, card -> caliper.take(Optional.of(card)));
    Button leave = new Button(caliperWords.get("lesson.close"));
    leave.setId("lesson-leave");
    leave.getStyleClass().setAll("quiet");
    leave.setOnAction(event -> caliper.leaveLesson());
    VBox card = new VBox(title, lesson, leave);
    card.getStyleClass().addAll("card", "stop-card", "question-card");
    card.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            event.consume();
            caliper.leaveLesson();
          }
        });
    return card;
  }
}
