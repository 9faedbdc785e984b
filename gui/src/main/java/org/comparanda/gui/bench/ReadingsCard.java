package org.comparanda.gui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import javafx.collections.ListChangeListener;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.capture.FieldState;
import org.comparanda.capture.NotPossible;
import org.comparanda.capture.warning.Warning;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;

/** The readings table with its field, what is odd about them, and the keys. */
final class ReadingsCard extends VBox {
  private static final int COLUMNS = 5;

  private final ReadingsViewModel readings;
  private final Words words;
  private final Numbers numbers;
  private final GridPane table = new GridPane();
  private final VBox notices = new VBox();
  private final ReadingField field;

  ReadingsCard(ReadingsViewModel readings, Words words, Numbers numbers, LongSupplier nanos) {
    this.readings = readings;
    this.words = words;
    this.numbers = numbers;
    field = new ReadingField(readings, words.get("reading"), nanos);
    getStyleClass().addAll("card", "readings");
    table.getStyleClass().add("readings-table");
    table.getColumnConstraints().addAll(columns());
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
    table.getChildren().removeIf(node -> node != field);
    List<Node> nodes = new ArrayList<>();
    for (String heading : List.of("pass.1", "pass.2", "kept")) {
      Label label = new Label(words.get(heading));
      label.getStyleClass().addAll("note", "value");
      nodes.add(at(label, nodes.size() + 2, 0));
    }
    boolean open = false;
    for (int i = 0; i < readings.rows().size(); i++) {
      ReadingRow row = readings.rows().get(i);
      open |= row.standing() == ReadingRow.Standing.CURRENT;
      line(row, i + 1, nodes);
    }
    table.getChildren().addAll(0, nodes);
    if (!open) {
      // After the last pass the keys still work: one more take, undo, record the call.
      GridPane.setConstraints(field, COLUMNS - 2, readings.rows().size() + 1);
    }
    boolean measured = !readings.rows().isEmpty();
    field.setVisible(measured);
    field.setManaged(measured);
  }

  private void line(ReadingRow row, int at, List<Node> nodes) {
    boolean now = row.standing() == ReadingRow.Standing.CURRENT;
    boolean gone = row.standing() == ReadingRow.Standing.GONE;
    Region ground = new Region();
    ground.getStyleClass().add(now ? "row-current" : "row");
    GridPane.setColumnSpan(ground, COLUMNS);
    nodes.add(at(ground, 0, at));
    nodes.add(at(label(row.code().value(), gone ? "grey" : "reading", "code"), 0, at));
    Label name = label(row.name(), "note");
    name.setWrapText(true);
    name.setMinHeight(USE_PREF_SIZE);
    nodes.add(at(name, 1, at));
    int pass = row.first().isEmpty() ? 2 : 3;
    if (gone) {
      Label why = label(row.kept(), "note");
      GridPane.setColumnSpan(why, 3);
      nodes.add(at(why, 2, at));
      return;
    }
    nodes.add(at(label(row.first(), "value"), 2, at));
    nodes.add(at(label(row.second(), "value"), 3, at));
    nodes.add(at(label(row.kept(), now ? "grey" : "reading", "value"), 4, at));
    if (now) {
      GridPane.setConstraints(field, pass, at);
    }
  }

  private static Label label(String text, String... styles) {
    Label label = new Label(text);
    label.getStyleClass().addAll(styles);
    return label;
  }

  private static Node at(Node node, int column, int row) {
    GridPane.setConstraints(node, column, row);
    return node;
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
            hint("F1", words.get("key.definition")));
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
