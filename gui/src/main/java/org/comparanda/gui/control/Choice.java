package org.comparanda.gui.control;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.Property;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** A small labelled choice: what it is called above, what was chosen below. */
public final class Choice<T> extends VBox {
  private final ComboBox<T> box = new ComboBox<>();

  public Choice(String id, String label, List<T> values, Function<T, String> text) {
    getStyleClass().addAll("choice", "choice-" + id);
    Label over = new Label(label);
    over.getStyleClass().add("note");
    over.setLabelFor(box);
    box.setId(id);
    box.setAccessibleText(label);
    box.getItems().setAll(values);
    box.setConverter(converter(text));
    box.setMaxWidth(Double.MAX_VALUE);
    getChildren().addAll(over, box);
  }

  /** The box itself. */
  public ComboBox<T> box() {
    return box;
  }

  /** The same choice, bound to a property both ways. */
  public Choice<T> bind(Property<T> property) {
    box.valueProperty().bindBidirectional(property);
    return this;
  }

  public static <T> StringConverter<T> converter(Function<T, String> text) {
    return new StringConverter<>() {
      @Override
      public String toString(T value) {
        return value == null ? "" : text.apply(value);
      }

      @Override
      public T fromString(String typed) {
        throw new UnsupportedOperationException("This list is chosen from, not typed into.");
      }
    };
  }
}
