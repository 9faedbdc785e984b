package org.comparanda.gui.sizedesk;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.StringProperty;

/** A line of the list of further bones: which measurement, and its reading as typed. */
public final class FurtherReading {
  private final ObjectProperty<Quantity> quantity;
  private final TypedReading reading = new TypedReading();

  FurtherReading(Quantity quantity) {
    this.quantity = new SimpleObjectProperty<>(quantity);
  }

  /** Which measurement. */
  public ObjectProperty<Quantity> quantityProperty() {
    return quantity;
  }

  /** Its reading as typed. */
  public StringProperty textProperty() {
    return reading.textProperty();
  }

  TypedReading reading() {
    return reading;
  }
}
