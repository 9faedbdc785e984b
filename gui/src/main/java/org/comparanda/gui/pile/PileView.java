package org.comparanda.gui.pile;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.ColumnWidth;
import org.comparanda.gui.control.FilePlace;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.gui.control.TurnButton;
import org.comparanda.gui.control.WrappedCell;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.pile.PileEntry;
import org.comparanda.slips.Paper;

/** The Pile: what came in, the top first, and the open arrival at the right. */
public final class PileView extends BorderPane {
  private final Words words;
  private final ObjectProperty<Paper> paper;
  private final TableView<PileEntry> table = new TableView<>();
  private final Label help = new WrappedLabel("", "note"); // its font says how large the text is

  /** Builds the view; it looks at the collection each time it comes into the window. */
  public PileView(
      PileViewModel model,
      Words words,
      Locale locale,
      String note,
      FilePlace files,
      ObjectProperty<Paper> paper) {
    this.words = words;
    this.paper = paper;
    setId("pile-screen");
    getStyleClass().addAll("screen", "pile");
    getStylesheets()
        .add(Objects.requireNonNull(PileView.class.getResource("pile.css")).toExternalForm());
    setTop(header(model, note, files));
    HBox halves = new HBox(list(model, new Numbers(locale)), new ArrivalPane(model, words));
    halves.getStyleClass().add("halves");
    setCenter(halves);
    parentProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.refresh();
              }
            });
  }

  private HBox header(PileViewModel model, String note, FilePlace files) {
    Label title = new Label(words.get("title"));
    title.getStyleClass().add("title");
    Label says = new Label(note);
    says.getStyleClass().add("note");
    Region spring = new Region();
    HBox.setHgrow(spring, Priority.ALWAYS);
    Button print = new Button(words.get("print"));
    print.setId("print");
    print.setOnAction(event -> files.choose("pile.pdf").ifPresent(model::print));
    HBox header =
        new HBox(
            title,
            says,
            spring,
            new TurnButton<>(
                "paper", paper, List.of(Paper.values()), Paper::title, words.get("paper")),
            print);
    header.getStyleClass().add("header");
    return header;
  }

  private VBox list(PileViewModel model, Numbers numbers) {
    table.setId("arrivals");
    table.setAccessibleText(words.get("title"));
    table.setItems(model.entries());
    table.setPlaceholder(new WrappedLabel(words.get("empty")));
    column("place", 32, e -> String.valueOf(e.place()));
    column("number", 78, e -> e.arrival().number());
    column("taxon", 166, e -> e.arrival().taxon().value())
        .setCellFactory(c -> new WrappedCell<>("taxon"));
    column("stage", 88, e -> words.get(key("stage.", e.arrival().stage())));
    column("since", 95, e -> e.arrival().cameIn().toString());
    column(
        "asked",
        82,
        e -> e.interest().stream().map(i -> i.by().value()).collect(Collectors.joining(", ")));
    column("gain", 70, e -> e.wanted().map(w -> numbers.written(w.growthText())).orElse("–"));
    column("from", 88, e -> e.arrival().from());
    ReadableColumns.of(table);
    table
        .getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.open(Optional.of(is));
              }
            });
    model
        .openProperty()
        .addListener(
            (o, was, is) ->
                is.filter(e -> !e.equals(table.getSelectionModel().getSelectedItem()))
                    .ifPresent(
                        e -> {
                          table.getSelectionModel().select(e);
                          table.scrollTo(e);
                        }));
    VBox.setVgrow(table, Priority.ALWAYS);
    help.setText(words.get("help"));
    VBox left = new VBox(table, help);
    left.getStyleClass().addAll("card", "list");
    HBox.setHgrow(left, Priority.ALWAYS);
    return left;
  }

  static String key(String group, Enum<?> value) {
    return group + value.name().toLowerCase(Locale.ROOT);
  }

  private TableColumn<PileEntry, String> column(
      String key, double width, Function<PileEntry, String> text) {
    TableColumn<PileEntry, String> column = new TableColumn<>(words.get("column." + key));
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.prefWidthProperty().bind(ColumnWidth.of(help.fontProperty(), 1.1 * width));
    column.setSortable(false);
    table.getColumns().add(column);
    return column;
  }
}
