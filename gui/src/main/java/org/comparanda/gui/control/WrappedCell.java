package org.comparanda.gui.control;

import javafx.scene.control.TableCell;
import javafx.scene.text.Text;

/** A cell of a table whose sentence is read whole, not cut off. */
public final class WrappedCell<T> extends TableCell<T, String> {
  private final Text text = new Text();

  public WrappedCell() {
    this("plain");
  }

  /**
   * A cell whose text has a style of its own.
   *
   * @param style style class beside the cell's, such as {@code taxon} for names in italics
   */
  public WrappedCell(String style) {
    text.getStyleClass().add(style);
    text.wrappingWidthProperty().bind(widthProperty().subtract(18));
    text.getStyleClass().add("cell-text");
    setPrefHeight(USE_COMPUTED_SIZE);
  }

  @Override
  protected void updateItem(String item, boolean empty) {
    super.updateItem(item, empty);
    text.setText(empty ? "" : item);
    setGraphic(text);
  }
}
