package org.comparanda.gui.shelf.keeping;

import java.util.List;
import javafx.collections.MapChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;
import org.comparanda.register.CardField;

/** The fields of a card, what is wrong under each. */
final class CardForm extends VBox {
  private static final List<CardField> WHO =
      List.of(CardField.TAXON, CardField.SEX, CardField.AGE_CLASS, CardField.ORIGIN);
  private static final List<CardField> WHERE =
      List.of(CardField.SOURCE, CardField.DRAWER, CardField.SOURCE_NAME);
  private static final List<CardField> BODY =
      List.of(
          CardField.BODY_LENGTH,
          CardField.LENGTH_ON,
          CardField.LENGTH_KIND,
          CardField.LENGTH_HOW,
          CardField.BODY_MASS,
          CardField.MASS_ON,
          CardField.MASS_KIND,
          CardField.MASS_HOW);
  private static final List<CardField> TERMS =
      List.of(CardField.PERMIT, CardField.EXPORT, CardField.HAND_OVER_BY);

  private final CardViewModel model;
  private final Words words;
  private final FieldInput inputs;

  CardForm(CardViewModel model) {
    this.model = model;
    words = model.room().words();
    inputs = new FieldInput(words);
    getStyleClass().add("card-form");
    getChildren()
        .addAll(
            number(),
            grid(WHO, 4),
            whole(CardField.FLAGS),
            grid(WHERE, 3),
            grid(BODY, 4),
            grid(TERMS, 3),
            whole(CardField.PERMIT_WORDS),
            whole(CardField.REMARKS));
  }

  private Node number() {
    TextField typed =
        Written.field(model.numberProperty(), "new-number", words.get("card.number.prompt"));
    Label label = Written.label(words.get("card.number"), "note");
    VBox box = new VBox(label, typed);
    box.visibleProperty().bind(model.cardProperty().map(java.util.Optional::isEmpty));
    box.managedProperty().bind(box.visibleProperty());
    return box;
  }

  private GridPane grid(List<CardField> fields, int columns) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("card-grid");
    for (int i = 0; i < columns; i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(100.0 / columns);
      column.setHgrow(Priority.ALWAYS);
      grid.getColumnConstraints().add(column);
    }
    for (int i = 0; i < fields.size(); i++) {
      grid.add(field(fields.get(i)), i % columns, i / columns);
    }
    return grid;
  }

  private Node whole(CardField field) {
    return field(field);
  }

  private VBox field(CardField field) {
    Node input = inputs.of(field, model.textProperty(field));
    input.setId("field-" + field.words());
    Label label = Written.label(words.get("field." + field.words()), "note");
    label.setLabelFor(input);
    Label wrong = Written.wrapped("", "field-problem");
    wrong.setId("problem-" + field.words());
    show(wrong, "");
    model
        .problems()
        .addListener(
            (MapChangeListener<CardField, String>)
                change -> {
                  if (change.getKey() == field) {
                    show(wrong, change.wasAdded() ? change.getValueAdded() : "");
                  }
                });
    return new VBox(label, input, wrong);
  }

  private static void show(Label wrong, String text) {
    wrong.setText(text);
    wrong.setVisible(!text.isEmpty());
    wrong.setManaged(!text.isEmpty());
  }
}
