package org.comparanda.gui.tray;

import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.tray.Priority;

/** The trays, those wanted first on top. */
final class TrayTable extends TableView<TrayLine> {
  TrayTable(TrayViewModel model) {
    TrayWords words = model.said();
    setId("trays");
    setItems(model.trays());
    setAccessibleText(words.get("trays"));
    setPlaceholder(new Label(words.get("trays.none")));
    column(words.get("column.tray"), 150, line -> name(line, words));
    column(words.get("column.state"), 82, line -> words.word("state", line.tray().state()));
    column(
        words.get("column.with"), 72, line -> line.tray().assignedTo().map(words::who).orElse(""));
    column(words.get("column.called"), 66, line -> line.called() + " / " + line.bones());
    ReadableColumns.of(this);
    getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.openTray(is.tray().id());
              }
            });
  }

  /** Its name; under it how soon it is wanted, where somebody set that. */
  private static String name(TrayLine line, TrayWords words) {
    Priority priority = line.tray().priority();
    String name = line.tray().name();
    return priority.equals(Priority.ordinary())
        ? name
        : words.get("trays.wanted", name, words.get("priority." + priority.rank()));
  }

  private void column(String title, double width, Function<TrayLine, String> text) {
    TableColumn<TrayLine, String> column = new TableColumn<>(title);
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.setPrefWidth(width);
    getColumns().add(column);
  }
}
