package org.comparanda.gui.secondlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.gui.control.WrappedLabel;

/** What waits: the every-nth draw, apart from it the bones picked for a reason; what was done. */
final class QueuePane extends VBox {
  private final SecondLookViewModel model;
  private final LookWords words;
  private final Runnable goOn;
  private final Label rule = new Label();
  private final List<TableView<QueueLine>> tables = new ArrayList<>();

  /**
   * @param goOn takes the focus from a chosen bone into it
   */
  QueuePane(SecondLookViewModel model, Runnable goOn) {
    this.model = model;
    this.goOn = goOn;
    this.words = model.said();
    getStyleClass().addAll("card", "queue");
    rule.textProperty().bind(model.ruleProperty());
    rule.setWrapText(true);
    rule.setMinHeight(USE_PREF_SIZE);
    rule.getStyleClass().add("note");
    ToggleButton why = new ToggleButton(words.get("why.show"));
    why.setId("why-shown");
    why.getStyleClass().add("flag");
    TableView<QueueLine> picked = table("picked", model.picked(), "queue.why");
    picked.getColumns().get(2).visibleProperty().bind(why.selectedProperty());
    Label colours = new WrappedLabel(words.get("why.colours"), "note");
    colours.visibleProperty().bind(why.selectedProperty().not());
    colours.managedProperty().bind(colours.visibleProperty());
    getChildren()
        .addAll(
            rule,
            head("drawn"),
            table("drawn", model.drawn(), "queue.look"),
            head("picked", why),
            colours,
            picked,
            head("looked"),
            table("looked", model.looked(), "queue.calls"));
    model
        .openProperty()
        .addListener(
            (o, was, is) -> {
              if (is.isEmpty()) {
                tables.forEach(t -> t.getSelectionModel().clearSelection());
              }
            });
  }

  /** Takes the focus to the first list with a bone. */
  void focusList() {
    tables.stream().filter(t -> !t.getItems().isEmpty()).findFirst().ifPresent(Node::requestFocus);
  }

  private HBox head(String key, Region... beside) {
    Label title = new Label(words.get("queue." + key));
    title.getStyleClass().add("strong");
    Region spring = new Region();
    HBox.setHgrow(spring, Priority.ALWAYS);
    HBox head = new HBox(title, spring);
    head.getChildren().addAll(beside);
    head.getStyleClass().add("queue-head");
    return head;
  }

  private TableView<QueueLine> table(String key, ObservableList<QueueLine> lines, String third) {
    TableView<QueueLine> table = new TableView<>(lines);
    table.setId(key);
    table.setAccessibleText(words.get("queue." + key));
    Label none = new WrappedLabel(words.get("queue." + key + ".none"), "note");
    none.setMinHeight(0);
    table.setPlaceholder(none);
    column(table, "queue.bone", 70, line -> line.bone().value());
    column(table, "queue.tray", 130, QueueLine::tray);
    column(table, third, 170, QueueLine::says);
    ReadableColumns.of(table);
    VBox.setVgrow(table, Priority.ALWAYS);
    table
        .getSelectionModel()
        .selectedItemProperty()
        .addListener((o, was, is) -> Optional.ofNullable(is).ifPresent(line -> open(table, line)));
    table.addEventHandler(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ENTER && model.openProperty().get().isPresent()) {
            event.consume();
            goOn.run();
          }
        });
    tables.add(table);
    return table;
  }

  private void open(TableView<QueueLine> table, QueueLine line) {
    tables.stream().filter(t -> t != table).forEach(t -> t.getSelectionModel().clearSelection());
    boolean shown =
        model.openProperty().get().filter(o -> o.bone().equals(line.bone())).isPresent();
    if (!shown) {
      model.open(line.bone());
    }
  }

  private void column(
      TableView<QueueLine> table, String key, double width, Function<QueueLine, String> text) {
    TableColumn<QueueLine, String> column = new TableColumn<>(words.get(key));
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.setPrefWidth(width);
    column.setSortable(false);
    table.getColumns().add(column);
  }
}
