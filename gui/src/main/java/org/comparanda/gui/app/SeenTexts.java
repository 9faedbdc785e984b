package org.comparanda.gui.app;

import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;

/** The texts that are to be seen in a part of the window, what a person typed left out. */
final class SeenTexts {
  private SeenTexts() {}

  static Stream<String> in(Node node) {
    if (!node.isVisible()) {
      return Stream.empty();
    }
    Stream<String> own = text(node).stream();
    boolean inside = node instanceof Parent && !(node instanceof TextInputControl);
    return inside
        ? Stream.concat(
            own, ((Parent) node).getChildrenUnmodifiable().stream().flatMap(SeenTexts::in))
        : own;
  }

  /** What one node says; nothing for one that only holds others. */
  static Optional<String> text(Node node) {
    Optional<String> said = Optional.empty();
    if (node instanceof Labeled labeled) {
      said = Optional.ofNullable(labeled.getText());
    } else if (node instanceof Text words) {
      said = Optional.ofNullable(words.getText());
    } else if (node instanceof TextInputControl field) {
      said = Optional.ofNullable(field.getPromptText());
    } else if (node instanceof ComboBoxBase<?> box) {
      said = Optional.ofNullable(box.getPromptText());
    }
    return said.filter(text -> !text.isBlank());
  }
}
