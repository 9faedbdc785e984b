package org.comparanda.gui.bench;

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

/** What lies over the bench until it is answered: STOP, a question, a caliper to be learned. */
final class Veil extends StackPane {
  private static final String STOP = "stop";
  private static final String LESSON = "lesson";

  private final BenchViewModel bench;
  private final Words words;
  private final Words caliperWords;
  private final LongSupplier nanos;
  private final Runnable lifted;

  /**
   * @param lifted follows when nothing lies over the bench any more
   */
  Veil(BenchViewModel bench, Words words, Words caliperWords, LongSupplier nanos, Runnable lifted) {
    this.bench = bench;
    this.words = words;
    this.caliperWords = caliperWords;
    this.nanos = nanos;
    this.lifted = lifted;
    setVisible(false);
    managedProperty().bind(visibleProperty());
    bench.readings().fieldProperty().addListener((o, was, is) -> show());
    bench.errands().questionProperty().addListener((o, was, is) -> show());
    bench.caliper().learningProperty().addListener((o, was, is) -> show());
  }

  private void show() {
    boolean stop =
        bench.readings().fieldProperty().get().showing() == FieldState.Showing.STOP_QUESTION;
    Optional<Question> question = bench.errands().questionProperty().get();
    if (stop) {
      cover(STOP, () -> StopCard.question(bench.readings(), words), "#stop-no");
    } else if (question.isPresent()) {
      cover(
          question.get(),
          () -> new QuestionCard(bench, question.get(), words, nanos),
          "#question-keys");
    } else if (bench.caliper().learningProperty().get()) {
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

  /** Lays a card over the bench. */
  void lay(VBox card, String focus) {
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

  /** Takes away whatever lies over the bench. */
  void lift() {
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
            bench.caliper().lesson(),
            caliperWords,
            nanos,
            card -> bench.caliper().take(Optional.of(card)));
    Button leave = new Button(caliperWords.get("lesson.close"));
    leave.setId("lesson-leave");
    leave.getStyleClass().setAll("quiet");
    leave.setOnAction(event -> bench.caliper().leaveLesson());
    VBox card = new VBox(title, lesson, leave);
    card.getStyleClass().addAll("card", "stop-card", "question-card");
    card.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            event.consume();
            bench.caliper().leaveLesson();
          }
        });
    return card;
  }
}
