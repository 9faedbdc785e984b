package org.comparanda.gui.tray;

import javafx.beans.property.StringProperty;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** A small labelled text field. */
final class Field extends VBox {
  private final TextField field = new TextField();

  Field(String id, String label) {
    getStyleClass().addAll("labelled", "labelled-" + id);
    Label over = new Label(label);
    over.getStyleClass().add("note");
    over.setLabelFor(field);
    field.setId(id);
    field.setAccessibleText(label);
    getChildren().addAll(over, field);
  }

  Field bind(StringProperty text) {
    field.textProperty().bindBidirectional(text);
    return this;
  }

  TextField field() {
    return field;
  }

  String text() {
    return field.getText();
  }
}
