package org.comparanda.gui.shelf;

import java.util.Optional;
import javafx.geometry.HPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import org.comparanda.bone.ElementKey;
import org.comparanda.taxon.TaxonName;

/**
 * Taxa by elements: how many animals, darker the more there are. Tints change at 1, 5, 10 and 30
 * animals; the number always stands in the cell. A click lists those animals.
 */
final class StockGrid extends GridPane {
  private final ShelfViewModel model;

  StockGrid(ShelfViewModel model) {
    this.model = model;
    setId("stock");
    getStyleClass().add("stock");
    model.stockProperty().addListener((o, was, is) -> show(is));
    show(model.stockProperty().get());
  }

  private void show(Stock stock) {
    getChildren().clear();
    getColumnConstraints().setAll(new ColumnConstraints());
    for (int column = 0; column < stock.elements().size(); column++) {
      ElementKey element = stock.elements().get(column);
      Label heading = new Label(model.said().heading(element));
      heading.getStyleClass().add("note");
      heading.setMinWidth(USE_PREF_SIZE);
      GridPane.setHalignment(heading, HPos.CENTER);
      add(heading, column + 1, 0);
      ColumnConstraints wide = new ColumnConstraints();
      wide.setHgrow(Priority.ALWAYS);
      getColumnConstraints().add(wide);
    }
    for (int row = 0; row < stock.rows().size(); row++) {
      Stock.Row line = stock.rows().get(row);
      Label taxon = new Label(line.taxon().value());
      taxon.getStyleClass().add("taxon");
      taxon.setMinWidth(USE_PREF_SIZE);
      add(taxon, 0, row + 1);
      for (int column = 0; column < stock.elements().size(); column++) {
        add(
            cell(line.taxon(), stock.elements().get(column), line.animals().get(column)),
            column + 1,
            row + 1);
      }
    }
  }

  private Button cell(TaxonName taxon, ElementKey element, int animals) {
    Button cell = new Button(animals == 0 ? "" : Integer.toString(animals));
    cell.getStyleClass().setAll("stock-cell", "stock-" + depth(animals));
    cell.setAccessibleText(taxon + ", " + model.said().element(element) + ": " + animals);
    cell.setMaxWidth(Double.MAX_VALUE);
    cell.setDisable(animals == 0);
    cell.setOnAction(
        event -> {
          model.filterTaxon(Optional.of(taxon));
          model.filterElement(Optional.of(element));
        });
    return cell;
  }

  private static int depth(int animals) {
    return animals == 0 ? 0 : animals < 5 ? 1 : animals < 10 ? 2 : animals < 30 ? 3 : 4;
  }
}
