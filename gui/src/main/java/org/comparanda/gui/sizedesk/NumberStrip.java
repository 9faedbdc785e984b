package org.comparanda.gui.sizedesk;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import org.comparanda.gui.text.Words;

/** The numbers under the plot: one column each, one row per line. */
final class NumberStrip extends GridPane {
  /** Width of a bold letter of ordinary text, on the generous side. */
  private static final double LETTER = 8.6;

  private static final int SHORT = 14;

  private final Words words;

  NumberStrip(Words words) {
    this.words = words;
    setId("numbers");
    getStyleClass().add("numbers");
  }

  void show(List<NumberRow> rows) {
    getChildren().clear();
    getColumnConstraints().clear();
    if (rows.isEmpty()) {
      return;
    }
    add(heading("line", words.get("numbers.line")), 0, 0);
    grow();
    for (int column = 0; column < LineNumbers.HEADINGS.size(); column++) {
      String key = LineNumbers.HEADINGS.get(column);
      add(heading(key, words.get("numbers." + key)), column + 1, 0);
      grow();
    }
    for (int row = 0; row < rows.size(); row++) {
      Label name = new Label(rows.get(row).line());
      name.getStyleClass().add("strong");
      name.setWrapText(true);
      name.setMinWidth(shortest(name.getText()));
      add(name, 0, row + 1);
      for (int column = 0; column < rows.get(row).values().size(); column++) {
        Label value = new Label(rows.get(row).values().get(column));
        value.getStyleClass().add(row == 0 ? "number" : "number-beside");
        value.setMinWidth(USE_PREF_SIZE);
        add(value, column + 1, row + 1);
      }
    }
  }

  /** A short name stays on one line, and no word of a long one is broken. */
  private static double shortest(String name) {
    if (name.length() <= SHORT) {
      return name.length() * LETTER;
    }
    int longest = 0;
    for (String word : name.split(" ", -1)) {
      longest = Math.max(longest, word.length());
    }
    return longest * LETTER;
  }

  private Label heading(String key, String text) {
    Label heading = new Label(text);
    heading.getStyleClass().add("note");
    heading.setMinWidth(USE_PREF_SIZE);
    if (key.equals("heldout") || key.equals("residual")) {
      Tooltip.install(heading, new Tooltip(words.get("numbers." + key + ".help")));
    }
    return heading;
  }

  private void grow() {
    ColumnConstraints column = new ColumnConstraints();
    column.setHgrow(Priority.SOMETIMES);
    getColumnConstraints().add(column);
  }
}
