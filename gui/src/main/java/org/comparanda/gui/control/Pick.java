package org.comparanda.gui.control;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** A small labelled choice. */
public final class Pick<T> extends VBox {
  private final ComboBox<T> box = new ComboBox<>();

  public Pick(String id, String label, List<T> values, Function<T, String> text) {
    getStyleClass().addAll("labelled", "labelled-" + id);
    Label over = new Label(label);
    over.getStyleClass().add("note");
    over.setLabelFor(box);
    box.setId(id);
    box.setAccessibleText(label);
    box.setMaxWidth(Double.MAX_VALUE);
    box.getItems().setAll(values);
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(T value) {
            return value == null ? "" : text.apply(value);
          }

          @Override
          public T fromString(String typed) {
            throw new UnsupportedOperationException("This list is chosen from, not typed into.");
          }
        });
    box.addEventHandler(KeyEvent.KEY_TYPED, this::jump);
    getChildren().addAll(over, box);
  }

  /** A letter goes on to the next entry that begins with it. */
  private void jump(KeyEvent typed) {
    String letter = typed.getCharacter().toLowerCase(Locale.ROOT);
    List<T> all = box.getItems();
    if (letter.isBlank() || typed.isShortcutDown() || typed.isAltDown()) {
      return;
    }
    for (int step = 1; step <= all.size(); step++) {
      T next = all.get((box.getSelectionModel().getSelectedIndex() + step) % all.size());
      if (box.getConverter().toString(next).toLowerCase(Locale.ROOT).startsWith(letter)) {
        box.setValue(next);
        return;
      }
    }
  }

  /** The box itself. */
  public ComboBox<T> box() {
    return box;
  }

  /** What is chosen, if anything. */
  public Optional<T> chosen() {
    return Optional.ofNullable(box.getValue());
  }
}
