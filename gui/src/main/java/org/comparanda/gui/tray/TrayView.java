package org.comparanda.gui.tray;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import org.comparanda.gui.control.Pick;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.measurement.Person;
import org.comparanda.tray.Search;

/** The Tray: lots and trays at the left, the open tray at the right, one field over everything. */
public final class TrayView extends BorderPane {
  private final TrayViewModel model;
  private final TrayWords words;
  private final ListView<Search.Hit> hits = new ListView<>();

  /**
   * Builds the view; it looks at the collection each time it comes into the window.
   *
   * @param note what is said beside the title (simulated demo data), may be empty
   */
  public TrayView(TrayViewModel model, String note, Printing printing) {
    this.model = model;
    this.words = model.said();
    setId("tray-screen");
    getStyleClass().addAll("screen", "tray");
    getStylesheets()
        .add(Objects.requireNonNull(TrayView.class.getResource("tray.css")).toExternalForm());
    setTop(header(note));
    HBox halves = new HBox(left(), new OpenTrayPane(model, printing));
    halves.getStyleClass().add("halves");
    PlainScroll scroll = new PlainScroll(halves);
    scroll.setFitToHeight(true);
    scroll.setFocusTraversable(false);
    setCenter(scroll);
    setBottom(message());
    parentProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.refresh();
              }
            });
  }

  private HBox header(String note) {
    Label title = new Label(words.get("title"));
    title.getStyleClass().add("title");
    title.setMinWidth(USE_PREF_SIZE);
    Label says = new WrappedLabel(note, "note");
    TextField search = new TextField();
    search.setId("find");
    search.setPromptText(words.get("find"));
    search.setAccessibleText(words.get("find"));
    search.textProperty().addListener((o, was, is) -> model.searchFor(is));
    search.setOnAction(event -> model.hits().stream().findFirst().ifPresent(model::openHit));
    search.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.DOWN && !model.hits().isEmpty()) {
            hits.requestFocus();
            hits.getSelectionModel().selectFirst();
            event.consume();
          } else if (event.getCode() == KeyCode.ESCAPE) {
            search.clear();
          }
        });
    HBox.setHgrow(search, Priority.ALWAYS);
    Pick<Person> person =
        new Pick<>(
            "me",
            words.get("me"),
            model.people(),
            p -> p.name().isBlank() ? p.id().value() : p.name());
    ComboBox<Person> box = person.box();
    box.setItems(model.people());
    box.valueProperty().bindBidirectional(model.personProperty());
    HBox header = new HBox(title, says, search, person);
    header.getStyleClass().add("header");
    return header;
  }

  private StackPane left() {
    ListView<LotLine> lots = new ListView<>(model.lots());
    lots.setId("lots");
    lots.setPlaceholder(new Label(words.get("lots.none")));
    lots.setCellFactory(list -> new LotCell());
    lots.setFocusTraversable(false);
    TrayTable table = new TrayTable(model);
    VBox.setVgrow(table, Priority.ALWAYS);
    VBox lists = new VBox(title("lots"), lots, title("trays"), table);
    lists.getStyleClass().addAll("card", "lists");
    hits.setItems(model.hits());
    hits.setId("hits");
    hits.setAccessibleText(words.get("hits"));
    hits.setCellFactory(list -> new HitCell(words));
    hits.setOnMouseClicked(event -> openChosen());
    hits.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER) {
            openChosen();
            event.consume();
          }
        });
    Label how = new Label(words.get("hits.how"));
    how.getStyleClass().add("note");
    how.setWrapText(true);
    VBox found = new VBox(title("hits"), how, hits);
    VBox.setVgrow(hits, Priority.ALWAYS);
    found.getStyleClass().addAll("card", "lists");
    hits.setPlaceholder(new Label(words.get("hits.none")));
    found.visibleProperty().bind(model.searchingProperty());
    lists.visibleProperty().bind(model.searchingProperty().not());
    StackPane left = new StackPane(lists, found);
    left.getStyleClass().add("left");
    return left;
  }

  private void openChosen() {
    Optional.ofNullable(hits.getSelectionModel().getSelectedItem()).ifPresent(model::openHit);
  }

  /** What happens to a hit that stands on another screen. */
  public void setOnElsewhere(Consumer<Search.Hit> elsewhere) {
    model.setElsewhere(elsewhere);
  }

  private Label title(String key) {
    Label title = new Label(words.get(key));
    title.getStyleClass().add("strong");
    return title;
  }

  private Label message() {
    Label message = new Label();
    message.setId("message");
    message.setWrapText(true);
    message.getStyleClass().add("message");
    message.textProperty().bind(model.messageProperty());
    message.managedProperty().bind(model.messageProperty().isNotEmpty());
    return message;
  }

  /** A lot with its progress. */
  private static final class LotCell extends ListCell<LotLine> {
    @Override
    protected void updateItem(LotLine line, boolean empty) {
      super.updateItem(line, empty);
      setText(null);
      if (empty || line == null) {
        setGraphic(null);
        return;
      }
      Label name = new Label(line.lot());
      name.getStyleClass().add("lot-name");
      ProgressBar bar = new ProgressBar(line.share());
      bar.getStyleClass().add("lot-bar");
      Label count = new Label(line.count());
      count.getStyleClass().add("lot-count");
      HBox above = new HBox(name, bar, count);
      above.getStyleClass().add("lot-row");
      Label forecast = new Label(line.forecast());
      forecast.getStyleClass().add("note");
      VBox row = new VBox(above, forecast);
      setGraphic(row);
    }
  }

  /** Something that was found. */
  private static final class HitCell extends ListCell<Search.Hit> {
    private static final int AROUND = 40; // padding of the cell and the gap behind the kind

    private final TrayWords words;

    HitCell(TrayWords words) {
      this.words = words;
      setPrefWidth(0); // as wide as the list, so that a long text wraps
    }

    @Override
    protected void updateItem(Search.Hit hit, boolean empty) {
      super.updateItem(hit, empty);
      setText(null);
      if (empty || hit == null) {
        setGraphic(null);
        return;
      }
      Label kind = new Label(words.word("hit", hit.kind()));
      kind.getStyleClass().addAll("note", "hit-kind");
      Text text = new Text(hit.text());
      text.getStyleClass().add("cell-text");
      text.wrappingWidthProperty()
          .bind(widthProperty().subtract(kind.widthProperty()).subtract(AROUND));
      HBox row = new HBox(kind, text);
      row.getStyleClass().add("lot-row");
      setGraphic(row);
    }
  }
}
