package org.comparanda.gui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import javafx.collections.ListChangeListener;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.gui.capture.KeyHints;
import org.comparanda.gui.capture.Notices;
import org.comparanda.gui.capture.ReadingField;
import org.comparanda.gui.capture.ReadingRow;
import org.comparanda.gui.capture.ReadingsViewModel;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;

/** The readings table with its field, what is odd about them, and the keys. */
final class ReadingsCard extends VBox {
  static final int COLUMNS = 5;

  private final ReadingsViewModel readings;
  private final GridPane table = new GridPane();
  private final List<ReadingStrip> strips = new ArrayList<>();
  private final ReadingField field;

  ReadingsCard(ReadingsViewModel readings, Words words, Numbers numbers, LongSupplier nanos) {
    this.readings = readings;
    field = new ReadingField(readings, words.get("reading"), nanos);
    getStyleClass().addAll("card", "readings");
    table.getStyleClass().add("readings-table");
    table.getColumnConstraints().addAll(columns());
    int heading = 2;
    for (String key : List.of("pass.1", "pass.2", "kept")) {
      table.add(label(words.get(key), "note", "value"), heading++, 0);
    }
    table.getChildren().add(field);
    Region spring = new Region();
    VBox.setVgrow(spring, Priority.ALWAYS);
    getChildren()
        .addAll(
            table, new Notices(readings, words, numbers), spring, new KeyHints(readings, words));
    readings.rows().addListener((ListChangeListener<ReadingRow>) change -> showRows());
    showRows();
  }

  /** The field, for the focus. */
  ReadingField field() {
    return field;
  }

  private static List<ColumnConstraints> columns() {
    List<ColumnConstraints> all = new ArrayList<>();
    for (int i = 0; i < COLUMNS; i++) {
      ColumnConstraints column = new ColumnConstraints();
      boolean name = i == 1;
      column.setHgrow(name ? Priority.ALWAYS : Priority.NEVER);
      column.setHalignment(i < 2 ? HPos.LEFT : HPos.RIGHT);
      column.setMinWidth(name ? 0 : USE_PREF_SIZE);
      all.add(column);
    }
    return all;
  }

  private void showRows() {
    List<ReadingRow> rows = readings.rows();
    while (strips.size() < rows.size()) {
      strips.add(new ReadingStrip(strips.size() + 1));
      // Under the field, which stands last and so on top.
      table.getChildren().addAll(table.getChildren().size() - 1, strip().nodes());
    }
    while (strips.size() > rows.size()) {
      table.getChildren().removeAll(strip().nodes());
      strips.remove(strips.size() - 1);
    }
    boolean open = false;
    for (int i = 0; i < rows.size(); i++) {
      ReadingRow row = rows.get(i);
      strips.get(i).show(row);
      if (row.standing() == ReadingRow.Standing.CURRENT) {
        open = true;
        GridPane.setConstraints(field, row.first().isEmpty() ? 2 : 3, i + 1);
      }
    }
    if (!open) {
      // After the last pass the keys still work: one more take, undo, record the call.
      GridPane.setConstraints(field, COLUMNS - 2, rows.size() + 1);
    }
    boolean measured = !readings.rows().isEmpty();
    field.setVisible(measured);
    field.setManaged(measured);
  }

  private static Label label(String text, String... styles) {
    Label label = new Label(text);
    label.getStyleClass().addAll(styles);
    return label;
  }

  private ReadingStrip strip() {
    return strips.get(strips.size() - 1);
  }
}
