package org.comparanda.gui.capture;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.text.Words;

/** The keys that are used most, under the readings. */
public final class KeyHints extends FlowPane {
  public KeyHints(ReadingsViewModel readings, Words words) {
    getStyleClass().add("hints");
    getChildren()
        .addAll(
            hint("Enter", words.get("key.next")),
            hint("-", words.get("key.notpossible")),
            hint("*", words.get("key.again")),
            hint("/", words.get("key.undo")),
            hint(". .", words.get("key.back")),
            hint("F1", words.get("key.definition")),
            more(readings, words));
  }

  /** The one hint that can be pressed, since it opens the list of everything else. */
  private static Button more(ReadingsViewModel readings, Words words) {
    Button more = new Button(words.get("more"));
    more.setId("more");
    more.getStyleClass().setAll("hint-more");
    more.setFocusTraversable(false);
    more.setGraphic(label("0 Enter", "key"));
    more.setOnAction(
        event -> {
          readings.pressed(NamedKey.ESCAPE);
          readings.typed('0');
          readings.pressed(NamedKey.ENTER);
        });
    return more;
  }

  static HBox hint(String key, String does) {
    HBox hint = new HBox(label(key, "key"), label(does, "note"));
    hint.getStyleClass().add("hint");
    return hint;
  }

  static Label label(String text, String... styles) {
    Label label = new Label(text);
    label.getStyleClass().addAll(styles);
    return label;
  }
}
