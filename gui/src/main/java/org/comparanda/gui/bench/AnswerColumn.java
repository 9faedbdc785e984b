package org.comparanda.gui.bench;

import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.comparanda.gui.capture.OutlineCard;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;

/**
 * The right half of the Bench: the sentence, the falling line or the reasons, the drawer, what
 * follows; over all of it the definition in large when it is asked for.
 */
final class AnswerColumn extends StackPane {
  AnswerColumn(
      BenchViewModel bench,
      Words words,
      Numbers numbers,
      AnswerCard answer,
      FallingCard falling,
      OutlineCard small) {
    HBox below = new HBox(new NearestCard(bench, words), new NextCard(bench, words, numbers));
    below.getStyleClass().add("bench-below");
    below.setMinHeight(USE_PREF_SIZE);
    below.getChildren().forEach(card -> HBox.setHgrow(card, Priority.ALWAYS));
    ReasonsCard reasons = new ReasonsCard(bench, words, numbers);
    reasons.visibleProperty().bind(answer.why().selectedProperty());
    falling.visibleProperty().bind(reasons.visibleProperty().not());
    StackPane shown = new StackPane(falling, reasons);
    VBox all = new VBox(answer, shown, new DrawerCard(bench, words), below);
    all.getStyleClass().add("bench-answers");
    VBox.setVgrow(shown, Priority.ALWAYS);
    OutlineCard large = large(bench, words, small);
    all.visibleProperty().bind(large.visibleProperty().not()); // what lies beneath takes no keys
    getChildren().addAll(all, large);
  }

  private static OutlineCard large(BenchViewModel bench, Words words, OutlineCard small) {
    OutlineCard large = outline(bench, words);
    large.setId("outline-large");
    large.getStyleClass().add("outline-large");
    large
        .visibleProperty()
        .bind(bench.definitionLargeProperty().or(small.drawing().hoverProperty()));
    large.setMinHeight(0);
    large.setPrefHeight(0);
    return large;
  }

  /** What to measure now on the bone in hand. */
  static OutlineCard outline(BenchViewModel bench, Words words) {
    return new OutlineCard(bench.readings(), bench.boneProperty(), bench::sketch, words);
  }
}
