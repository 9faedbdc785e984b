package org.comparanda.gui.oldcards;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.comparanda.exchange.table.Encodings;
import org.comparanda.gui.control.ColumnWidth;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.gui.control.TurnButton;
import org.comparanda.gui.oldcards.OldCardsViewModel.Which;
import org.comparanda.gui.text.Words;
import org.comparanda.oldcards.CardOnFile;

/** Old Cards: the cards as found at the left, what the open one seems to say at the right. */
public final class OldCardsView extends BorderPane {
  private final OldCardsViewModel model;
  private final Words words;
  private final TableView<CardOnFile> table = new TableView<>();
  private final Label help = new Label();

  /** Builds the view; it looks at the collection each time it comes into the window. */
  public OldCardsView(
      OldCardsViewModel model, Words words, String note, Supplier<Optional<Path>> files) {
    this.model = model;
    this.words = words;
    setId("oldcards-screen");
    getStyleClass().addAll("screen", "oldcards");
    getStylesheets()
        .add(
            Objects.requireNonNull(OldCardsView.class.getResource("oldcards.css"))
                .toExternalForm());
    setTop(header(note, files));
    HBox halves = new HBox(list(), new CardPane(model, words));
    halves.getStyleClass().add("halves");
    setCenter(halves);
    keys();
    parentProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.refresh();
              }
            });
  }

  /** Brings a list in, as the button does after its dialog. */
  public void bringIn(Path list) {
    model.bringIn(list);
  }

  private void keys() {
    KeyCombination one = new KeyCodeCombination(KeyCode.ENTER, KeyCombination.SHORTCUT_DOWN);
    KeyCombination alike =
        new KeyCodeCombination(
            KeyCode.ENTER, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
    setOnKeyPressed(
        event -> {
          if (alike.match(event)) {
            model.acceptAlike();
            event.consume();
          } else if (one.match(event)) {
            model.accept();
            event.consume();
          }
        });
  }

  private HBox header(String note, Supplier<Optional<Path>> files) {
    Label title = new Label(words.get("title"));
    title.getStyleClass().add("title");
    Label says = new Label(note);
    says.getStyleClass().add("note");
    Region spring = new Region();
    HBox.setHgrow(spring, Priority.ALWAYS);
    Button load = new Button(words.get("bring"));
    load.setId("bring-in");
    load.setOnAction(event -> files.get().ifPresent(this::bringIn));
    List<Charset> encodings = new ArrayList<>(List.of(StandardCharsets.UTF_8));
    encodings.addAll(Encodings.offered());
    TurnButton<Charset> encoding =
        new TurnButton<>(
            "encoding",
            model.encodingProperty(),
            encodings,
            e -> words.get("encoding.saved", e.name().replace("x-", "")),
            words.get("encoding"));
    TextField column = new TextField();
    column.setId("column");
    column.setPromptText(words.get("column.prompt"));
    column.setAccessibleText(words.get("column.label"));
    column.setPrefColumnCount(20);
    column.textProperty().bindBidirectional(model.columnProperty());
    HBox header = new HBox(title, says, spring, encoding, column, load);
    header.getStyleClass().add("header");
    return header;
  }

  private VBox list() {
    ComboBox<Which> which = new ComboBox<>();
    which.setId("which");
    which.setAccessibleText(words.get("column.state"));
    which.getItems().setAll(Which.values());
    which.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(Which value) {
            return value == null
                ? ""
                : words.get("which." + value.name().toLowerCase(java.util.Locale.ROOT));
          }

          @Override
          public Which fromString(String text) {
            throw new UnsupportedOperationException("The list is not typed into.");
          }
        });
    which.setValue(model.whichProperty().get());
    which.setOnAction(
        event -> {
          if (which.getValue() != model.whichProperty().get()) {
            model.show(which.getValue());
          }
        });
    model.whichProperty().addListener((o, was, is) -> which.setValue(is));
    model
        .shownProperty()
        .addListener(
            (o, was, is) ->
                is.filter(c -> !c.card().equals(table.getSelectionModel().getSelectedItem()))
                    .ifPresent(
                        c -> {
                          table.getSelectionModel().select(c.card());
                          table.scrollTo(c.card());
                        }));
    table.setId("cards");
    table.setAccessibleText(words.get("title"));
    table.setItems(model.listed());
    Label empty = new Label(words.get("list.empty"));
    empty.setWrapText(true);
    table.setPlaceholder(empty);
    column("number", 56, c -> String.valueOf(c.card().number()));
    column("text", 380, c -> c.card().text());
    column(
        "state",
        110,
        c ->
            words.get(
                "which."
                    + c.latest()
                        .map(d -> d.kind().name().toLowerCase(java.util.Locale.ROOT))
                        .orElse("waiting")));
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
    VBox.setVgrow(table, Priority.ALWAYS);
    help.setText(words.get("list.help"));
    help.getStyleClass().add("note");
    help.setWrapText(true);
    VBox left = new VBox(which, table, help);
    left.getStyleClass().addAll("card", "list");
    HBox.setHgrow(left, Priority.ALWAYS);
    return left;
  }

  private void column(
      String key, double width, java.util.function.Function<CardOnFile, String> text) {
    TableColumn<CardOnFile, String> column = new TableColumn<>(words.get("column." + key));
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.prefWidthProperty().bind(ColumnWidth.of(help.fontProperty(), 1.1 * width));
    column.setSortable(false);
    table.getColumns().add(column);
  }
}
