package org.comparanda.gui.sizedesk;

import java.util.List;
import javafx.beans.Observable;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;

/** Further bones or measurements of the same animal: a line each, and a button for one more. */
final class FurtherPanel extends VBox {
  private final SizeDeskViewModel model;
  private final Words words;
  private final VBox rows = new VBox();
  private final Button add = new Button();

  FurtherPanel(SizeDeskViewModel model, Words words) {
    this.model = model;
    this.words = words;
    getStyleClass().add("field");
    rows.getStyleClass().add("field");
    add.setText(words.get("further.add"));
    add.setId("further-add");
    add.getStyleClass().setAll("quiet");
    add.setOnAction(event -> model.readings().addFurther());
    getChildren().addAll(rows, add);
    model.readings().further().addListener((Observable o) -> show());
    model.quantities().addListener((Observable o) -> show());
    show();
  }

  private void show() {
    List<FurtherReading> further = model.readings().further();
    rows.getChildren().clear();
    for (int i = 0; i < further.size(); i++) {
      rows.getChildren().add(row(further.get(i), i));
    }
    long measured = model.quantities().stream().filter(q -> !q.ofBody()).count();
    add.setDisable(further.size() + 1 >= measured);
  }

  private HBox row(FurtherReading further, int place) {
    QuantityBox quantity = new QuantityBox("further-" + place, model.quantities());
    quantity.setAccessibleText(words.get("further.which"));
    quantity.valueProperty().bindBidirectional(further.quantityProperty());
    TextField reading = new TextField();
    reading.setId("further-reading-" + place);
    reading.setAccessibleText(words.get("ask.reading"));
    reading.setPromptText(words.get("ask.reading.short"));
    reading.textProperty().bindBidirectional(further.textProperty());
    Fields.typed(reading, model.readings()::read);
    Button remove = new Button("×");
    remove.setId("further-remove-" + place);
    remove.setAccessibleText(words.get("further.remove"));
    remove.getStyleClass().setAll("quiet");
    remove.setOnAction(event -> model.readings().remove(further));
    HBox row = new HBox(quantity, reading, remove);
    row.getStyleClass().add("further-row");
    HBox.setHgrow(quantity, Priority.ALWAYS);
    reading.getStyleClass().add("further-reading");
    return row;
  }
}
