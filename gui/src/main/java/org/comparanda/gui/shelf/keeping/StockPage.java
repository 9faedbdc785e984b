package org.comparanda.gui.shelf.keeping;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableSet;
import javafx.geometry.HPos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.bone.ElementKey;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.text.Words;
import org.comparanda.stock.HardPair;
import org.comparanda.stock.Stock;
import org.comparanda.taxon.TaxonName;

/** Taxa by elements, tinted by the number of animals; beside it what can't be told apart. */
public final class StockPage extends HBox {
  private final StockViewModel model;
  private final Words words;
  private final BiConsumer<TaxonName, ElementKey> open;
  private final GridPane grid = new GridPane();
  private final VBox taxonChoices = new VBox();
  private final VBox elementChoices = new VBox();
  private final VBox pairs = new VBox();

  /**
   * The page.
   *
   * @param open lists the animals of a cell
   */
  public StockPage(StockViewModel model, BiConsumer<TaxonName, ElementKey> open) {
    this.model = model;
    this.open = open;
    words = model.room().words();
    setId("stock-page");
    getStyleClass().add("halves");
    grid.getStyleClass().add("stock");
    grid.setId("stock-matrix");
    taxonChoices.getStyleClass().add("stock-choices");
    elementChoices.getStyleClass().add("stock-choices");
    VBox choices =
        new VBox(
            Written.label(words.get("stock.elements"), "strong"),
            elementChoices,
            Written.label(words.get("stock.taxa"), "strong"),
            taxonChoices);
    choices.getStyleClass().add("stock-choices");
    VBox left = new VBox(new PlainScroll(choices));
    left.getStyleClass().addAll("card", "stock-left");
    VBox middle =
        new VBox(
            Written.label(words.get("stock.title"), "strong"),
            Written.wrapped(words.get("stock.help"), "note"),
            new PlainScroll(grid));
    middle.getStyleClass().addAll("card", "stock-middle");
    HBox.setHgrow(middle, Priority.ALWAYS);
    pairs.getStyleClass().add("pairs");
    pairs.setId("pairs");
    VBox right =
        new VBox(
            Written.label(words.get("pairs.title"), "strong"),
            Written.told(model.sentenceProperty(), "pairs-sentence", "note"),
            new PlainScroll(pairs));
    VBox.setVgrow(right.getChildren().get(2), Priority.ALWAYS);
    right.getStyleClass().addAll("card", "stock-right");
    getChildren().addAll(left, middle, right);
    model.stockProperty().addListener((o, was, is) -> choose(is));
    model.hiddenTaxa().addListener((javafx.collections.SetChangeListener<TaxonName>) c -> matrix());
    model
        .hiddenElements()
        .addListener((javafx.collections.SetChangeListener<ElementKey>) c -> matrix());
    model.pairs().addListener((ListChangeListener<HardPair>) c -> pairs());
    choose(model.stockProperty().get());
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

  private void choose(Stock stock) {
    boxes(taxonChoices, stock.taxa(), model.hiddenTaxa(), TaxonName::value, "taxon");
    boxes(
        elementChoices,
        stock.elements(),
        model.hiddenElements(),
        key -> heading(key),
        "note-plain");
    matrix();
  }

  private static <T> void boxes(
      VBox into, List<T> all, ObservableSet<T> hidden, Function<T, String> name, String style) {
    into.getChildren().clear();
    for (T one : all) {
      CheckBox box = new CheckBox(name.apply(one));
      box.getStyleClass().add(style);
      box.setSelected(!hidden.contains(one));
      box.setOnAction(
          event -> {
            if (box.isSelected()) {
              hidden.remove(one);
            } else {
              hidden.add(one);
            }
          });
      into.getChildren().add(box);
    }
  }

  private void matrix() {
    grid.getChildren().clear();
    List<ElementKey> elements = model.elements();
    grid.getColumnConstraints().setAll(new ColumnConstraints());
    for (int column = 0; column < elements.size(); column++) {
      ColumnConstraints wide = new ColumnConstraints();
      wide.setHgrow(Priority.ALWAYS);
      grid.getColumnConstraints().add(wide);
      Label heading = Written.label(heading(elements.get(column)), "note");
      GridPane.setHalignment(heading, HPos.CENTER);
      grid.add(heading, column + 1, 0);
    }
    List<TaxonName> taxa = model.taxa();
    for (int row = 0; row < taxa.size(); row++) {
      grid.add(Written.label(taxa.get(row).value(), "taxon"), 0, row + 1);
    }
    for (Stock.Cell cell : model.stockProperty().get().cells()) {
      int row = taxa.indexOf(cell.taxon());
      int column = elements.indexOf(cell.element());
      if (row >= 0 && column >= 0) {
        grid.add(button(cell), column + 1, row + 1);
      }
    }
  }

  private Button button(Stock.Cell cell) {
    Button button = new Button(cell.animals() == 0 ? "" : Integer.toString(cell.animals()));
    button.getStyleClass().setAll("stock-cell", "stock-" + depth(cell.animals()));
    button.setAccessibleText(cell.taxon() + ", " + heading(cell.element()) + ": " + cell.animals());
    button.setMaxWidth(Double.MAX_VALUE);
    button.setDisable(cell.animals() == 0);
    button.setOnAction(event -> open.accept(cell.taxon(), cell.element()));
    return button;
  }

  private static int depth(int animals) {
    return animals == 0 ? 0 : animals < 5 ? 1 : animals < 10 ? 2 : animals < 30 ? 3 : 4;
  }

  /** Short name of an element: what stands before the comma. */
  private String heading(ElementKey key) {
    return model.room().element(key).replaceAll(",.*", "");
  }

  private void pairs() {
    pairs.getChildren().clear();
    for (HardPair pair : model.pairs()) {
      String better =
          pair.better()
              .map(
                  b ->
                      words.get(
                          "pair.better",
                          heading(b.element()),
                          b.mixedUp().hits(),
                          b.mixedUp().tries()))
              .orElse(words.get("pair.no.better"));
      VBox line =
          new VBox(
              Written.wrapped(words.get("pair.names", pair.one(), pair.other()), "taxon"),
              Written.wrapped(
                  words.get(
                      "pair.mixed",
                      heading(pair.element()),
                      pair.mixedUp().hits(),
                      pair.mixedUp().tries())),
              Written.wrapped(better, pair.better().isPresent() ? "helpful" : "note"));
      pairs.getChildren().add(line);
    }
  }
}
