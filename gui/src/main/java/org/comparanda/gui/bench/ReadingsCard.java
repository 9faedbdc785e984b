package org.comparanda.gui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import javafx.collections.ListChangeListener;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.capture.FieldState;
import org.comparanda.capture.NamedKey;
import org.comparanda.capture.NotPossible;
import org.comparanda.capture.warning.Warning;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;

/** The readings table with its field, what is odd about them, and the keys. */
final class ReadingsCard extends VBox {
  static final int COLUMNS = 5;

  private final ReadingsViewModel readings;
  private final Words words;
  private final Numbers numbers;
  private final GridPane table = new GridPane();
  private final VBox notices = new VBox();
  private final List<ReadingStrip> strips = new ArrayList<>();
  private final ReadingField field;

  ReadingsCard(ReadingsViewModel readings, Words words, Numbers numbers, LongSupplier nanos) {
    this.readings = readings;
    this.words = words;
    this.numbers = numbers;
    field = new ReadingField(readings, words.get("reading"), nanos);
    getStyleClass().addAll("card", "readings");
    table.getStyleClass().add("readings-table");
    table.getColumnConstraints().addAll(columns());
    int heading = 2;
    for (String key : List.of("pass.1", "pass.2", "kept")) {
      table.add(label(words.get(key), "note", "value"), heading++, 0);
    }
    table.getChildren().add(field);
    notices.getStyleClass().add("notices");
    Region spring = new Region();
    VBox.setVgrow(spring, Priority.ALWAYS);
    getChildren().addAll(table, notices, spring, hints());
    readings.rows().addListener((ListChangeListener<ReadingRow>) change -> showRows());
    readings.fieldProperty().addListener((o, was, is) -> showNotices());
    readings.messageProperty().addListener((o, was, is) -> showNotices());
    readings.warningsProperty().addListener((o, was, is) -> showNotices());
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

  private void showNotices() {
    notices.getChildren().clear();
    FieldState state = readings.fieldProperty().get();
    if (state.showing() == FieldState.Showing.REASONS) {
      notices.getChildren().add(reasons());
      return;
    }
    String message = readings.messageProperty().get();
    if (!message.isBlank()) {
      notices.getChildren().add(wrapped(message, "notice"));
    }
    shown(readings.warningsProperty().get())
        .forEach(warning -> notices.getChildren().add(wrapped(said(warning), "notice")));
  }

  /** The proposal that Plus takes, and the first warning without one. */
  private static List<Warning> shown(List<Warning> all) {
    List<Warning> shown = new ArrayList<>();
    all.stream().filter(w -> w.proposal().isPresent()).findFirst().ifPresent(shown::add);
    all.stream().filter(w -> w.proposal().isEmpty()).findFirst().ifPresent(shown::add);
    return shown;
  }

  private String said(Warning warning) {
    return warning
        .proposal()
        .map(mm -> warning.sentence() + " " + words.get("proposal", numbers.upTo(mm.mm(), 2)))
        .orElse(warning.sentence());
  }

  private Node reasons() {
    FlowPane all = new FlowPane();
    all.getStyleClass().add("hints");
    all.getChildren().add(label(words.get("why.notpossible"), "strong"));
    for (NotPossible reason : NotPossible.values()) {
      all.getChildren()
          .add(hint(Integer.toString(reason.number()), words.get("notpossible." + reason.name())));
    }
    all.getChildren().add(hint("- -", words.get("key.stop")));
    return all;
  }

  /** The one hint that can be pressed, since it opens the list of everything else. */
  private Button more() {
    Button more = new Button(words.get("more"));
    more.setId("more");
    more.getStyleClass().setAll("hint-more");
    more.setFocusTraversable(false);
    more.setGraphic(label("0 Enter", "key"));
    more.setOnAction(
        event -> {
          readings.pressed(NamedKey.ESCAPE);
          readings.typed('0');
          readings.pressed(NamedKey.ENTER);
        });
    return more;
  }

  private FlowPane hints() {
    FlowPane all = new FlowPane();
    all.getStyleClass().add("hints");
    all.getChildren()
        .addAll(
            hint("Enter", words.get("key.next")),
            hint("-", words.get("key.notpossible")),
            hint("*", words.get("key.again")),
            hint("/", words.get("key.undo")),
            hint(". .", words.get("key.back")),
            hint("F1", words.get("key.definition")),
            more());
    return all;
  }

  private static HBox hint(String key, String does) {
    HBox hint = new HBox(label(key, "key"), label(does, "note"));
    hint.getStyleClass().add("hint");
    return hint;
  }

  private static Label wrapped(String text, String style) {
    Label label = label(text, style);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }
}
