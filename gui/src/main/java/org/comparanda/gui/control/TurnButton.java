package org.comparanda.gui.control;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.Button;

/**
 * Says which of a few is taken; each press takes the next.
 *
 * @param <E> what is taken
 */
public final class TurnButton<E> extends Button {
  /** The button, whose choice all screens with this property share. */
  public TurnButton(
      String id, ObjectProperty<E> taken, List<E> all, Function<E, String> name, String label) {
    setId(id);
    getStyleClass().setAll("button", "quiet");
    setAccessibleText(label);
    textProperty().bind(taken.map(name));
    setOnAction(event -> taken.set(all.get((all.indexOf(taken.get()) + 1) % all.size())));
  }
}
