package org.comparanda.gui.control;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
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
    getChildren().addAll(over, box);
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
