package org.comparanda.gui.bench;

import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import org.comparanda.gui.text.Words;

/** The Bench. */
public final class BenchView extends StackPane {
  public BenchView(Words words) {
    getStyleClass().add("screen");
    getChildren().add(new Label(words.get("title")));
  }
}
