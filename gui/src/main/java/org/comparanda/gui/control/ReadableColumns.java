package org.comparanda.gui.control;

import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;

/**
 * Columns whose texts are never cut, at any size of the text: sentences wrap, and no column is
 * narrower than its longest word and its head. Where the table is too narrow for them all, it
 * scrolls sideways.
 */
public final class ReadableColumns {
  private static final double CELL_EM = 1.9; // a cell's padding at both sides
  private static final double HEAD_EM = 2.8; // a head's padding, wider

  private ReadableColumns() {}

  /** Makes the columns of a table so; called when all are there. */
  public static <T> void of(TableView<T> table) {
    for (TableColumn<T, ?> column : table.getColumns()) {
      wrapped(column);
    }
    // Called through, so that the table still scrolls where the columns don't fit.
    table.setColumnResizePolicy(
        asked -> TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN.call(asked));
    LongestWords<T> words = new LongestWords<>(table);
    ListChangeListener<T> changed = change -> fit(table, words);
    table.getItems().addListener(changed);
    table
        .itemsProperty()
        .addListener(
            (o, was, is) -> {
              is.addListener(changed);
              fit(table, words);
            });
    table
        .skinProperty()
        .addListener(
            (o, was, is) -> {
              table.getProperties().remove(ReadableColumns.class);
              fit(table, words);
            });
    table.layoutBoundsProperty().addListener((o, was, is) -> followed(table, words));
  }

  /** Fits the columns again whenever the size of the text changes, once there is a head to ask. */
  private static <T> void followed(TableView<T> table, LongestWords<T> words) {
    head(table)
        .filter(label -> table.getProperties().putIfAbsent(ReadableColumns.class, label) == null)
        .ifPresent(
            label -> {
              label.fontProperty().addListener((o, was, is) -> fit(table, words));
              fit(table, words);
            });
  }

  /** The head of a column, whose font is the table's; empty before the table is shown. */
  private static Optional<Labeled> head(TableView<?> table) {
    return Optional.ofNullable(table.lookup(".column-header .label"))
        .filter(Labeled.class::isInstance)
        .map(Labeled.class::cast);
  }

  @SuppressWarnings("unchecked") // every column of ours shows texts
  private static <T> void wrapped(TableColumn<T, ?> column) {
    TableColumn<T, String> texts = (TableColumn<T, String>) column;
    if (texts.getCellFactory() == (Object) TableColumn.DEFAULT_CELL_FACTORY) {
      texts.setCellFactory(c -> new WrappedCell<>());
    }
  }

  private static <T> void fit(TableView<T> table, LongestWords<T> words) {
    Font font = head(table).map(Labeled::getFont).orElseGet(Font::getDefault);
    Font bold = Font.font(font.getFamily(), FontWeight.BOLD, font.getSize());
    List<String> longest = words.now();
    for (int i = 0; i < longest.size(); i++) {
      TableColumn<T, ?> column = table.getColumns().get(i);
      double cell = width(longest.get(i), bold) + CELL_EM * font.getSize();
      double head = width(column.getText(), bold) + HEAD_EM * font.getSize();
      column.setMinWidth(table.snapSizeX(Math.max(cell, head))); // laid out on whole pixels
    }
  }

  private static double width(String words, Font font) {
    Text text = new Text(words);
    text.setFont(font);
    return text.getLayoutBounds().getWidth();
  }
}
