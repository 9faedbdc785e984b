package org.comparanda.gui.control;

import javafx.beans.property.StringProperty;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** A small labelled text field. */
public final class Field extends VBox {
  private final TextField field = new TextField();

  public Field(String id, String label) {
    getStyleClass().addAll("labelled", "labelled-" + id);
    Label over = new WrappedLabel(label, "note");
    over.setLabelFor(field);
    field.setId(id);
    field.setAccessibleText(label);
    getChildren().addAll(over, field);
  }

  /** Binds what is typed both ways. */
  public Field bind(StringProperty text) {
    field.textProperty().bindBidirectional(text);
    return this;
  }

  /** The field itself. */
  public TextField field() {
    return field;
  }

  /** What is typed. */
  public String text() {
    return field.getText();
  }
}
