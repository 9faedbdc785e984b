package org.comparanda.gui.shelf.keeping;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;
import org.comparanda.register.Merge;

/** A second number of the same animal: looked at first, then merged. */
final class DoublesCard extends VBox {
  private final Words words;
  private final VBox differing = new VBox();
  private final Button merge;

  DoublesCard(CardViewModel model) {
    words = model.room().words();
    getStyleClass().addAll("card", "doubles-card");
    TextField other =
        Written.field(model.doubles().otherProperty(), "double-number", words.get("double.prompt"));
    other.setAccessibleText(words.get("double"));
    HBox.setHgrow(other, Priority.ALWAYS);
    Button look = Written.button(words.get("double.look"), "double-look", model.doubles()::look);
    merge = Written.button(words.get("double.merge"), "double-merge", model::merge);
    HBox row = new HBox(8, other, look, merge);
    getChildren()
        .addAll(
            Written.label(words.get("double"), "strong"),
            Written.wrapped(words.get("double.help"), "note"),
            row,
            differing);
    model.doubles().mergeProperty().addListener((o, was, is) -> show(is));
    show(model.doubles().mergeProperty().get());
  }

  private void show(Optional<Merge> looked) {
    merge.setDisable(looked.isEmpty());
    differing.getChildren().clear();
    looked.ifPresent(
        m -> {
          differing
              .getChildren()
              .add(
                  Written.wrapped(
                      words.get(
                          "double.result",
                          m.result().id(),
                          m.result().animal().bones().size(),
                          m.differing().size(),
                          m.measured().size())));
          m.differing()
              .forEach(
                  d ->
                      differing
                          .getChildren()
                          .add(
                              Written.wrapped(
                                  words.get("double.differs", d.what(), d.is(), d.was()), "note")));
        });
  }
}
