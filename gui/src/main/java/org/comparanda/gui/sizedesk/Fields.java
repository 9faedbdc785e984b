package org.comparanda.gui.sizedesk;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.comparanda.gui.text.Words;

/** Named controls, alone and side by side. */
final class Fields {
  private final Words words;

  Fields(Words words) {
    this.words = words;
  }

  /** A control under its name. */
  VBox named(String key, Node control) {
    return under(new Label(words.get(key)), control);
  }

  /** A control under a label of its own. */
  static VBox under(Label label, Node control) {
    label.getStyleClass().add("note");
    label.setLabelFor(control);
    control.setAccessibleText(label.getText());
    label.textProperty().addListener((o, was, is) -> control.setAccessibleText(is));
    VBox field = new VBox(label, control);
    field.getStyleClass().add("field");
    return field;
  }

  /** Side by side, each with the same width. */
  static HBox row(VBox... fields) {
    HBox row = new HBox(fields);
    row.getStyleClass().add("field-row");
    for (VBox field : fields) {
      HBox.setHgrow(field, Priority.ALWAYS);
      field.setPrefWidth(1);
      field.setMinWidth(0);
    }
    return row;
  }

  /** A field that hands its text over at Enter and when it is left. */
  static TextField typed(TextField field, Runnable taken) {
    field.setOnAction(event -> taken.run());
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (was && !is) {
                taken.run();
              }
            });
    return field;
  }

  /** A list of words, {@code id.value} in the words of the screen. */
  <E extends Enum<E>> ComboBox<E> choices(
      ComboBox<E> box, String id, List<E> values, Consumer<E> choose) {
    Function<E, String> says = value -> words.get(id + "." + value.name().toLowerCase(Locale.ROOT));
    return list(box, id, values, says, choose);
  }

  /** A list to choose from. */
  static <T> ComboBox<T> list(
      ComboBox<T> box, String id, List<T> values, Function<T, String> says, Consumer<T> choose) {
    box.setId(id);
    box.getItems().setAll(values);
    box.setConverter(says(box, says));
    box.setOnAction(event -> Optional.ofNullable(box.getValue()).ifPresent(choose));
    box.setMaxWidth(Double.MAX_VALUE);
    return box;
  }

  static <T> StringConverter<T> says(ComboBox<T> box, Function<T, String> says) {
    return new StringConverter<>() {
      @Override
      public String toString(T value) {
        return value == null ? "" : says.apply(value);
      }

      @Override
      public T fromString(String text) {
        return box.getItems().stream()
            .filter(v -> toString(v).equals(text))
            .findFirst()
            .orElseThrow();
      }
    };
  }

  /** A sentence that is there only while it says something. */
  static Label sentence(String id, String style, javafx.beans.value.ObservableValue<String> text) {
    Label label = new Label();
    label.setId(id);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(Control.USE_PREF_SIZE);
    label.textProperty().bind(text);
    label.visibleProperty().bind(label.textProperty().isNotEmpty());
    label.managedProperty().bind(label.visibleProperty());
    return label;
  }
}
