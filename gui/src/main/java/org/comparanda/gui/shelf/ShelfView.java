package org.comparanda.gui.shelf;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.comparanda.bone.ElementKey;
import org.comparanda.gui.control.ColumnWidth;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.gui.control.WrappedCell;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.gui.shelf.ImportState.Stage;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;

/** The Shelf: the animals at the left, the stock and the open animal's card at the right. */
public final class ShelfView extends BorderPane {
  private final ShelfViewModel model;
  private final Words words;
  private final TableView<Animal> table = new TableView<>();
  private final TextField search = new TextField();
  private final ShelfPages pages;
  private final Map<String, Region> made = new HashMap<>();
  private final StackPane page = new StackPane();
  private final ToggleGroup tabs = new ToggleGroup();
  private final HBox animals;
  private final Button goOn = new Button();

  /**
   * Builds the view; it looks at the collection each time it comes into the window.
   *
   * @param note what is said beside the title (simulated demo data), may be empty
   * @param files asks which table is to be imported
   * @param pages the keeper's pages
   */
  public ShelfView(
      ShelfViewModel model,
      Words words,
      String note,
      Supplier<Optional<Path>> files,
      ShelfPages pages) {
    this.model = model;
    this.words = words;
    this.pages = pages;
    setId("shelf-screen");
    getStyleClass().addAll("screen", "shelf");
    getStylesheets()
        .add(Objects.requireNonNull(ShelfView.class.getResource("shelf.css")).toExternalForm());
    setTop(header(note, files));
    animals = new HBox(animals(), right());
    animals.getStyleClass().add("halves");
    show(ShelfPages.ANIMALS);
    ImportPane intake = new ImportPane(model, words);
    page.visibleProperty().bind(model.importProperty().map(state -> state.stage() == Stage.NONE));
    setCenter(new StackPane(page, intake));
    parentProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                goOn();
                model.refresh();
              }
            });
  }

  /** Tries a table, as the button does after its dialog. */
  public void importTable(Path table) {
    model.tryImport(table);
  }

  /** Shows a page by its key. */
  public void show(String key) {
    Region shown =
        key.equals(ShelfPages.ANIMALS)
            ? animals
            : made.computeIfAbsent(key, k -> Objects.requireNonNull(pages.pages().get(k), k).get());
    page.getChildren().setAll(shown);
    tabs.getToggles().forEach(tab -> tab.setSelected(key.equals(tab.getUserData())));
  }

  /** Opens an animal among the others. */
  public void open(AnimalId id) {
    show(ShelfPages.ANIMALS);
    model.open(id);
  }

  /** Lists the animals of a taxon with an element. */
  public void list(TaxonName taxon, ElementKey element) {
    show(ShelfPages.ANIMALS);
    model.filterTaxon(Optional.of(taxon));
    model.filterElement(Optional.of(element));
  }

  private HBox tabs() {
    HBox row = new HBox();
    row.getStyleClass().add("page-tabs");
    if (!pages.tabs().isEmpty()) {
      tab(row, ShelfPages.ANIMALS);
      pages.tabs().forEach(key -> tab(row, key));
    }
    return row;
  }

  private void tab(HBox row, String key) {
    ToggleButton tab = new ToggleButton(words.get("page." + key));
    tab.setId("page-" + key);
    tab.setUserData(key);
    tab.setToggleGroup(tabs);
    tab.getStyleClass().setAll("page-tab");
    tab.setOnAction(event -> show(key));
    row.getChildren().add(tab);
  }

  private FlowPane header(String note, Supplier<Optional<Path>> files) {
    Label title = new Label(words.get("title"));
    title.getStyleClass().add("title");
    Label says = new Label(note);
    says.getStyleClass().add("note");
    Button load = new Button(words.get("import"));
    load.setId("import-table");
    load.setOnAction(event -> files.get().ifPresent(this::importTable));
    FlowPane header = new FlowPane(title, says, tabs());
    if (!pages.tabs().isEmpty()) {
      Button add = new Button(words.get("animal.add"));
      add.setId("animal-add");
      add.setOnAction(
          event -> {
            pages.add().run();
            show("card");
          });
      goOn.setId("go-on");
      goOn.managedProperty().bind(goOn.visibleProperty());
      goOn();
      header.getChildren().addAll(add, goOn);
    }
    header.getChildren().add(load);
    header.getStyleClass().add("header");
    return header;
  }

  /** Offers the animal whose measuring was left in the middle, until it is opened. */
  private void goOn() {
    Optional<AnimalId> left = pages.unfinished().get();
    goOn.setVisible(left.isPresent());
    goOn.setText(left.map(id -> words.get("go.on", id)).orElse(""));
    goOn.setOnAction(
        event ->
            left.ifPresent(
                id -> {
                  pages.measure().accept(id);
                  show("skeleton");
                  goOn.setVisible(false);
                }));
  }

  private VBox animals() {
    search.setId("search");
    search.setPromptText(words.get("search"));
    search.setAccessibleText(words.get("search"));
    search.textProperty().addListener((o, was, is) -> model.filterText(is));
    HBox.setHgrow(search, Priority.ALWAYS);
    Button all = new Button(words.get("filter.all"));
    all.setId("filter-all");
    all.getStyleClass().setAll("button", "quiet");
    all.setMinWidth(USE_PREF_SIZE);
    all.setOnAction(
        event -> {
          search.clear();
          model.filterNothing();
        });
    Label chosen = new Label();
    chosen.setId("filter");
    chosen.textProperty().bind(model.filterProperty().map(this::said));
    Label count = new Label();
    count.setId("count");
    count.getStyleClass().add("note");
    count.setMinWidth(USE_PREF_SIZE);
    count.textProperty().bind(model.countProperty());
    HBox filters = new HBox(search, chosen, all, count);
    filters.getStyleClass().add("filters");
    columns();
    VBox.setVgrow(table, Priority.ALWAYS);
    Label older = new WrappedLabel("", "note");
    older.setId("under-old-names");
    older.textProperty().bind(model.underOldNamesProperty());
    older.managedProperty().bind(older.textProperty().isNotEmpty());
    VBox left = new VBox(filters, older, table);
    left.getStyleClass().addAll("card", "animals");
    HBox.setHgrow(left, Priority.ALWAYS);
    return left;
  }

  private String said(ShelfFilter filter) {
    String taxon = filter.taxon().map(TaxonName::value).orElse("");
    String element = filter.element().map(model.said()::element).orElse("");
    return taxon.isEmpty() || element.isEmpty() ? taxon + element : taxon + ", " + element;
  }

  private void columns() {
    table.setId("animals");
    table.setItems(model.listed());
    table.setAccessibleText(words.get("title"));
    Label nothing = new Label();
    nothing
        .textProperty()
        .bind(
            model
                .countProperty()
                .map(c -> words.get(model.holdsNothing() ? "table.none" : "table.empty")));
    table.setPlaceholder(nothing);
    column("number", 86, model::number);
    column("taxon", 152, a -> a.taxon().map(TaxonName::value).orElse(""))
        .setCellFactory(c -> new WrappedCell<>("taxon"));
    column("drawer", 84, a -> a.drawer().orElse(""));
    column("sex", 64, Animal::sex);
    column("age", 58, Animal::ageClass);
    column("length", 80, model.said()::length);
    column("mass", 70, model.said()::mass);
    column("bones", 60, a -> Integer.toString(a.bones().size()));
    ReadableColumns.of(table);
    table
        .getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.open(is.id());
              }
            });
  }

  private TableColumn<Animal, String> column(
      String key, double width, Function<Animal, String> text) {
    TableColumn<Animal, String> column = new TableColumn<>(words.get("column." + key));
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.prefWidthProperty().bind(ColumnWidth.of(search.fontProperty(), width));
    table.getColumns().add(column);
    return column;
  }

  private VBox right() {
    Label title = new Label(words.get("stock"));
    title.getStyleClass().add("strong");
    Label help = new Label(words.get("stock.help"));
    help.getStyleClass().add("note");
    VBox stock = new VBox(title, help, new StockGrid(model));
    stock.getStyleClass().addAll("card", "stock-card");
    CardPane card = new CardPane(model, words, cardButtons());
    VBox.setVgrow(card, Priority.ALWAYS);
    VBox right = new VBox(stock, card);
    right.getStyleClass().add("right");
    return right;
  }

  private List<Button> cardButtons() {
    return pages.tabs().isEmpty()
        ? List.of()
        : List.of(
            cardButton("card", "card.edit", pages.edit()),
            cardButton("skeleton", "card.measure", pages.measure()));
  }

  private Button cardButton(String key, String text, Consumer<AnimalId> does) {
    Button button = new Button(words.get(text));
    button.setId("open-" + key);
    button.setOnAction(
        event ->
            model
                .openedAnimal()
                .ifPresent(
                    animal -> {
                      does.accept(animal);
                      show(key);
                    }));
    return button;
  }
}
