package org.comparanda.gui.bench;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.comparanda.gui.text.Words;

/** One hint in one line; takes no focus, so that typing goes on beneath it. */
final class HintBar extends HBox {
  HintBar(HintsViewModel hints, Words words) {
    setId("hint-bar");
    getStyleClass().add("hint-bar");
    setAlignment(Pos.CENTER_LEFT);
    Label text = new Label();
    text.setId("hint-text");
    text.setWrapText(true);
    text.setMinHeight(USE_PREF_SIZE);
    text.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(text, Priority.ALWAYS);
    text.textProperty()
        .bind(
            hints
                .shownProperty()
                .map(hint -> hint.map(h -> words.get("hint." + h.name())).orElse("")));
    Button gotIt = button("hint-read", words.get("hint.gotit"));
    gotIt.setOnAction(event -> hints.gotIt());
    Button noMore = button("hint-none", words.get("hint.nomore"));
    noMore.setOnAction(event -> hints.noMore());
    getChildren().addAll(text, gotIt, noMore);
    visibleProperty().bind(hints.shownProperty().map(Optional::isPresent));
    managedProperty().bind(visibleProperty());
  }

  private static Button button(String id, String text) {
    Button button = new Button(text);
    button.setId(id);
    button.getStyleClass().setAll("quiet", "hint-button");
    button.setFocusTraversable(false);
    button.setMinWidth(USE_PREF_SIZE);
    return button;
  }
}
