package org.comparanda.gui.daybook;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.Field;
import org.comparanda.gui.control.Pick;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.measurement.Person;

/** The Day Book: entries page by page at the left; head, proof and the open entry at the right. */
public final class DayBookView extends BorderPane {
  private final DayBookViewModel model;
  private final BookWords words;
  private final Label place = new Label();

  /**
   * Builds the view; it looks at the collection each time it comes into the window.
   *
   * @param note what is said beside the title (simulated demo data), may be empty
   */
  public DayBookView(DayBookViewModel model, String note) {
    this.model = model;
    this.words = model.said();
    setId("daybook-screen");
    getStyleClass().addAll("screen", "daybook");
    getStylesheets()
        .add(Objects.requireNonNull(DayBookView.class.getResource("daybook.css")).toExternalForm());
    Label title = new Label(words.get("title"));
    title.getStyleClass().add("title");
    Label says = new Label(note);
    says.getStyleClass().add("note");
    HBox header = new HBox(title, says);
    header.getStyleClass().add("header");
    setTop(header);
    HBox halves = new HBox(book(), new BesidePane(model));
    halves.getStyleClass().add("halves");
    PlainScroll scroll = new PlainScroll(halves);
    scroll.setFitToHeight(true);
    scroll.setFocusTraversable(false);
    setCenter(scroll);
    parentProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.refresh();
              }
            });
  }

  private VBox book() {
    TableView<EntryLine> table = new TableView<>(model.lines());
    table.setId("entries");
    table.setAccessibleText(words.get("title"));
    Label none = new Label();
    none.setWrapText(true);
    none.textProperty().bind(place.textProperty());
    table.setPlaceholder(none);
    column(table, "when", 182, EntryLine::when);
    column(table, "who", 130, EntryLine::who);
    column(table, "what", 160, EntryLine::what);
    column(table, "said", 180, EntryLine::said);
    ReadableColumns.of(table);
    VBox.setVgrow(table, Priority.ALWAYS);
    table
        .getSelectionModel()
        .selectedItemProperty()
        .addListener((o, was, is) -> Optional.ofNullable(is).ifPresent(model::open));
    place.setId("page-place");
    place.textProperty().bind(model.placeProperty());
    place.getStyleClass().add("note");
    HBox pages =
        new HBox(
            turn("newest", model::newest),
            turn("newer", model::newer),
            turn("older", model::older),
            turn("oldest", model::oldest),
            place);
    pages.getStyleClass().add("pages");
    VBox book = new VBox(filter(), table, pages);
    book.getStyleClass().addAll("card", "book");
    HBox.setHgrow(book, Priority.ALWAYS);
    return book;
  }

  private Button turn(String key, Runnable to) {
    Button button = new Button(words.get("page." + key));
    button.setId("page-" + key);
    button.setOnAction(event -> to.run());
    return button;
  }

  private HBox filter() {
    Pick<Optional<Person>> person =
        new Pick<>(
            "by",
            words.get("filter.person"),
            List.of(),
            p -> p.map(model::person).orElse(words.get("filter.everybody")));
    model
        .people()
        .addListener(
            (javafx.beans.Observable changed) -> {
              List<Optional<Person>> all = new ArrayList<>(List.of(Optional.empty()));
              model.people().forEach(p -> all.add(Optional.of(p)));
              person.box().getItems().setAll(all);
              person.box().setValue(Optional.empty());
            });
    person
        .box()
        .valueProperty()
        .addListener((o, was, is) -> model.ofPerson(is == null ? Optional.empty() : is));
    List<String> kinds = new ArrayList<>(List.of(""));
    kinds.addAll(model.kinds());
    Pick<String> kind =
        new Pick<>(
            "kind",
            words.get("filter.kind"),
            kinds,
            k -> k.isEmpty() ? words.get("filter.everything") : words.kind(k));
    kind.box().setValue("");
    kind.box().valueProperty().addListener((o, was, is) -> model.ofKind(is == null ? "" : is));
    Field text = new Field("book-text", words.get("filter.text"));
    text.field().textProperty().addListener((o, was, is) -> model.withText(is));
    HBox.setHgrow(text, Priority.ALWAYS);
    HBox filter = new HBox(person, kind, text);
    filter.getStyleClass().add("filter");
    return filter;
  }

  private void column(
      TableView<EntryLine> table, String key, double width, Function<EntryLine, String> text) {
    TableColumn<EntryLine, String> column = new TableColumn<>(words.get("column." + key));
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.setPrefWidth(width);
    column.setSortable(false);
    table.getColumns().add(column);
  }
}
