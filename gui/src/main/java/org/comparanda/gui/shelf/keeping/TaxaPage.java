package org.comparanda.gui.shelf.keeping;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.gui.control.WrappedCell;
import org.comparanda.gui.text.Words;
import org.comparanda.taxon.HouseTaxon;

/** The names of taxa as a tree; old names find what they are now. */
public final class TaxaPage extends VBox {
  private final TaxaViewModel model;
  private final Words words;
  private final TableView<TaxonRow> table = new TableView<>();
  private final Button add;
  private final Button leave;

  /**
   * The page.
   *
   * @param files asks for a file of names
   * @param place asks where a table of them is to be written
   */
  public TaxaPage(
      TaxaViewModel model, Supplier<Optional<Path>> files, Supplier<Optional<Path>> place) {
    this.model = model;
    words = model.room().words();
    setId("taxa-page");
    getStyleClass().addAll("card", "taxa-page");
    table.setId("taxa");
    table.setAccessibleText(words.get("taxa.title"));
    table.setItems(model.listed());
    column("taxa.name", 330, r -> " ".repeat(4 * r.depth()) + r.name())
        .setCellFactory(c -> new WrappedCell<>("taxon"));
    column("taxa.author", 190, TaxonRow::author);
    column("taxa.rank", 100, TaxonRow::rank);
    column("taxa.plain", 200, TaxonRow::plainName);
    column("taxa.animals", 90, r -> r.animals() == 0 ? "" : Long.toString(r.animals()));
    column("taxa.synonyms", 260, TaxonRow::synonyms);
    ReadableColumns.of(table);
    table
        .getSelectionModel()
        .selectedItemProperty()
        .addListener((o, was, is) -> model.choose(Optional.ofNullable(is).map(TaxonRow::name)));
    VBox.setVgrow(table, Priority.ALWAYS);
    add = Written.button(words.get("taxa.add"), "taxa-add", model::add, "record");
    leave = Written.button(words.get("taxa.leave"), "taxa-leave", model::leave, "quiet");
    getChildren().addAll(head(files, place), table, edit(), foot());
    model.triedProperty().addListener((o, was, is) -> tried(is));
    tried(model.triedProperty().get());
    sceneProperty()
        .addListener(
            (o, was, is) -> {
              if (was == null && is != null) {
                model.look();
              }
            });
  }

  private HBox head(Supplier<Optional<Path>> files, Supplier<Optional<Path>> place) {
    TextField search =
        Written.field(model.filterProperty(), "taxa-filter", words.get("taxa.filter"));
    HBox.setHgrow(search, Priority.ALWAYS);
    HBox head =
        new HBox(
            search,
            Written.button(
                words.get("taxa.file"), "taxa-file", () -> files.get().ifPresent(model::tryFile)),
            Written.button(
                words.get("taxa.save"), "taxa-save", () -> place.get().ifPresent(model::save)));
    head.getStyleClass().add("page-head");
    return head;
  }

  private HBox edit() {
    Label name = Written.label("", "strong");
    name.textProperty()
        .bind(
            model
                .chosenProperty()
                .map(
                    n ->
                        n.map(one -> words.get("taxa.chosen", one))
                            .orElse(words.get("taxa.none.chosen"))));
    TextField target =
        Written.field(
            model.targetProperty(),
            "taxa-target",
            words.get("taxa.new.name") + " / " + words.get("taxa.new.parent"));
    HBox.setHgrow(target, Priority.ALWAYS);
    HBox row =
        new HBox(
            name,
            target,
            Written.button(words.get("taxa.rename"), "taxa-rename", model::rename),
            Written.button(words.get("taxa.move"), "taxa-move", model::move),
            Written.button(words.get("taxa.add.below"), "taxa-below", model::addBelow));
    row.getStyleClass().add("page-row");
    return row;
  }

  private VBox foot() {
    SignatureBar signature = new SignatureBar(model.signature(), words);
    HBox.setHgrow(signature, Priority.ALWAYS);
    HBox row = new HBox(signature, leave, add);
    row.getStyleClass().add("page-row");
    return new VBox(
        6,
        Written.told(model.sentenceProperty(), "taxa-sentence", "strong"),
        row,
        Written.wrapped(words.get("taxa.everywhere"), "note"));
  }

  private void tried(List<HouseTaxon> names) {
    for (Button button : List.of(add, leave)) {
      button.setVisible(!names.isEmpty());
      button.setManaged(!names.isEmpty());
    }
  }

  private TableColumn<TaxonRow, String> column(
      String key, double width, Function<TaxonRow, String> text) {
    TableColumn<TaxonRow, String> column = new TableColumn<>(words.get(key));
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.setPrefWidth(width);
    column.setSortable(false);
    table.getColumns().add(column);
    return column;
  }
}
