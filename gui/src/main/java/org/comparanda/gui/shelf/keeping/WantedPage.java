package org.comparanda.gui.shelf.keeping;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.gui.control.TurnButton;
import org.comparanda.gui.control.WrappedCell;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.slips.Paper;
import org.comparanda.stock.Wanted;

/** What to prepare next, the largest gain first; it can be printed. */
public final class WantedPage extends VBox {
  private final Words words;
  private final Numbers numbers;
  private final TableView<Wanted.Entry> table = new TableView<>();

  /**
   * The page.
   *
   * @param print makes a printed list
   * @param paper what it is printed on
   */
  public WantedPage(
      WantedViewModel model, Consumer<WantedViewModel> print, ObjectProperty<Paper> paper) {
    words = model.room().words();
    numbers = new Numbers(model.room().locale());
    setId("wanted-page");
    getStyleClass().addAll("card", "findings-page");
    table.setId("wanted");
    table.setAccessibleText(words.get("wanted.title"));
    table.setItems(model.listed());
    table.setPlaceholder(new Label(""));
    column("wanted.place", 60, e -> Integer.toString(model.listed().indexOf(e) + 1));
    column("wanted.taxon", 230, e -> e.taxon().value())
        .setCellFactory(c -> new WrappedCell<>("taxon"));
    column("wanted.element", 180, e -> model.room().element(e.element()));
    column("wanted.gain", 150, e -> numbers.written(e.growthText()));
    column("wanted.reason", 560, e -> words.said(e.reason()));
    ReadableColumns.of(table);
    VBox.setVgrow(table, Priority.ALWAYS);
    Region spring = new Region();
    HBox.setHgrow(spring, Priority.ALWAYS);
    HBox head =
        new HBox(
            Written.label(words.get("wanted.title"), "strong"),
            spring,
            new TurnButton<>(
                "paper", paper, List.of(Paper.values()), Paper::title, words.get("paper")),
            Written.button(words.get("wanted.print"), "wanted-print", () -> print.accept(model)));
    head.getStyleClass().add("page-head");
    getChildren()
        .addAll(head, Written.told(model.sentenceProperty(), "wanted-sentence", "note"), table);
    sceneProperty()
        .addListener(
            (o, was, is) -> {
              if (was == null && is != null) {
                model.look();
              } else if (is == null) {
                model.stop();
              }
            });
  }

  private TableColumn<Wanted.Entry, String> column(
      String key, double width, Function<Wanted.Entry, String> text) {
    TableColumn<Wanted.Entry, String> column = new TableColumn<>(words.get(key));
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.setPrefWidth(width);
    column.setSortable(false);
    table.getColumns().add(column);
    return column;
  }
}
