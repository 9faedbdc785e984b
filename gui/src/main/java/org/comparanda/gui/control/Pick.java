package org.comparanda.gui.control;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.collections.ObservableList;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

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
    box.setConverter(Choice.converter(text));
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

  /** Offers what a screen's model offers, shows what it holds, and tells it what is chosen. */
  public Pick<T> follow(
      ObservableList<T> offered,
      ReadOnlyObjectProperty<Optional<T>> held,
      Consumer<? super T> chosen) {
    box.setItems(offered);
    held.addListener((o, was, is) -> box.setValue(is.orElse(null)));
    box.valueProperty().addListener((o, was, is) -> Optional.ofNullable(is).ifPresent(chosen));
    return this;
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
