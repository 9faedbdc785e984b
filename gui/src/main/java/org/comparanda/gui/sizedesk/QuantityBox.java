package org.comparanda.gui.sizedesk;

import java.util.Optional;
import javafx.collections.ObservableList;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;

/** A list of quantities: short in the box, with their definitions in the list that drops down. */
final class QuantityBox extends ComboBox<Quantity> {
  QuantityBox(String id, ObservableList<Quantity> quantities) {
    setId(id);
    setItems(quantities);
    setConverter(Fields.says(this, Quantity::label));
    setButtonCell(
        new ListCell<>() {
          @Override
          protected void updateItem(Quantity quantity, boolean empty) {
            super.updateItem(quantity, empty);
            setText(empty || quantity == null ? "" : quantity.name());
          }
        });
    setMaxWidth(Double.MAX_VALUE);
  }

  Optional<Quantity> chosen() {
    return Optional.ofNullable(getValue());
  }

  void select(String key) {
    getItems().stream().filter(q -> q.key().equals(key)).findFirst().ifPresent(this::setValue);
  }
}
