package org.comparanda.gui.shelf.keeping;

import javafx.beans.property.StringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import org.comparanda.gui.control.WrappedLabel;

/** Labels, buttons and fields as these pages have them. */
public final class Written {
  private Written() {}

  public static Label label(String text, String... styles) {
    Label label = new Label(text);
    label.getStyleClass().addAll(styles);
    label.setMinWidth(Region.USE_PREF_SIZE);
    return label;
  }

  /** A text that may run over several lines. */
  public static Label wrapped(String text, String... styles) {
    return new WrappedLabel(text, styles);
  }

  public static Label told(StringProperty text, String id, String... styles) {
    Label label = wrapped("", styles);
    label.setId(id);
    label.textProperty().bind(text);
    return label;
  }

  public static Button button(String text, String id, Runnable does, String... styles) {
    Button button = new Button(text);
    button.setId(id);
    if (styles.length > 0) {
      button.getStyleClass().setAll("button");
      button.getStyleClass().addAll(styles);
    }
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(event -> does.run());
    return button;
  }

  public static TextField field(StringProperty text, String id, String prompt) {
    TextField field = new TextField();
    field.setId(id);
    field.setPromptText(prompt);
    field.setAccessibleText(prompt);
    field.textProperty().bindBidirectional(text);
    return field;
  }
}
