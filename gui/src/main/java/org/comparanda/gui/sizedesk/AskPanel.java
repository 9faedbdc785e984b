package org.comparanda.gui.sizedesk;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.Correction;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.LineScale;

/** The left side: what is asked, the reading, which animals, how fitted. */
final class AskPanel extends VBox {
  private final SizeDeskViewModel model;
  private final Words words;
  private final ComboBox<Quantity> predict = new ComboBox<>();
  private final ComboBox<Quantity> from = new ComboBox<>();
  private final ComboBox<LineMethod> method = new ComboBox<>();
  private final ComboBox<LineScale> scale = new ComboBox<>();
  private final ComboBox<Correction> correction = new ComboBox<>();
  private final ComboBox<Beside> beside = new ComboBox<>();
  private final Label readingLabel = new Label();
  private boolean settling;

  AskPanel(SizeDeskViewModel model, Words words) {
    this.model = model;
    this.words = words;
    getStyleClass().addAll("card", "ask");
    TaxonPicker picker = new TaxonPicker(model, words);
    VBox.setVgrow(picker, Priority.ALWAYS);
    getChildren()
        .addAll(
            field("ask.predict", quantities(predict, "predict")),
            field("ask.from", quantities(from, "from")),
            readings(),
            problem(),
            labelled(new Label(words.get("ask.taxa")), picker),
            row(
                field("ask.method", choices(method, "method", methods(), model::fitBy)),
                field(
                    "ask.scale",
                    choices(scale, "scale", List.of(LineScale.values()), model::fitOn))),
            row(
                field(
                    "ask.correction",
                    choices(
                        correction, "correction", List.of(Correction.values()), model::correctBy)),
                field(
                    "ask.beside",
                    choices(beside, "beside", List.of(Beside.values()), model::compareWith))));
    VBox.setVgrow(getChildren().get(4), Priority.ALWAYS);
    model.askProperty().addListener((o, was, is) -> show(is));
    show(model.askProperty().get());
  }

  private static List<LineMethod> methods() {
    return List.of(LineMethod.OLS, LineMethod.SMA, LineMethod.MA);
  }

  private HBox readings() {
    TextField reading = new TextField();
    reading.setId("reading");
    reading.getStyleClass().add("reading-field");
    reading.setPromptText(words.get("ask.reading.prompt"));
    reading.textProperty().bindBidirectional(model.readingProperty());
    reading.setOnAction(event -> model.readTyped());
    readingLabel.setText(words.get("ask.reading"));
    TextField own = new TextField();
    own.setId("own");
    own.setPromptText(words.get("ask.own.prompt"));
    own.textProperty().bindBidirectional(model.ownProperty());
    own.setOnAction(event -> model.readTyped());
    for (TextField field : List.of(reading, own)) {
      field
          .focusedProperty()
          .addListener(
              (o, was, is) -> {
                if (was && !is) {
                  model.readTyped();
                }
              });
    }
    return row(labelled(readingLabel, reading), field("ask.own", own));
  }

  private Label problem() {
    Label problem = new Label();
    problem.setId("problem");
    problem.getStyleClass().add("warning");
    problem.setWrapText(true);
    problem.textProperty().bind(model.problemProperty());
    problem.visibleProperty().bind(model.problemProperty().isNotEmpty());
    problem.managedProperty().bind(problem.visibleProperty());
    return problem;
  }

  private ComboBox<Quantity> quantities(ComboBox<Quantity> box, String id) {
    box.setId(id);
    box.setItems(model.quantities());
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(Quantity quantity) {
            return quantity == null ? "" : quantity.label();
          }

          @Override
          public Quantity fromString(String label) {
            return box.getItems().stream()
                .filter(q -> q.label().equals(label))
                .findFirst()
                .orElseThrow();
          }
        });
    box.setOnAction(event -> pairChosen());
    box.setMaxWidth(Double.MAX_VALUE);
    return box;
  }

  private void pairChosen() {
    if (!settling) {
      chosen(predict).ifPresent(p -> chosen(from).ifPresent(f -> model.askFor(p.key(), f.key())));
    }
  }

  private static <T> Optional<T> chosen(ComboBox<T> box) {
    return Optional.ofNullable(box.getValue());
  }

  private <E extends Enum<E>> ComboBox<E> choices(
      ComboBox<E> box, String id, List<E> values, Consumer<E> choose) {
    box.setId(id);
    box.getItems().setAll(values);
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(E value) {
            return value == null ? "" : words.get(id + "." + value.name().toLowerCase(Locale.ROOT));
          }

          @Override
          public E fromString(String label) {
            return values.stream().filter(v -> toString(v).equals(label)).findFirst().orElseThrow();
          }
        });
    box.setOnAction(event -> chosen(box).ifPresent(choose));
    box.setMaxWidth(Double.MAX_VALUE);
    return box;
  }

  private void show(Optional<SizeAsk> ask) {
    settling = true;
    setDisable(ask.isEmpty());
    ask.ifPresent(
        a -> {
          select(predict, a.predict());
          select(from, a.from());
          method.setValue(a.method());
          scale.setValue(a.scale());
          correction.setValue(a.correction());
          beside.setValue(a.beside());
          String unit = chosen(from).map(Quantity::unit).orElse("");
          readingLabel.setText(
              unit.isEmpty() ? words.get("ask.reading") : words.get("ask.reading.unit", unit));
        });
    settling = false;
  }

  private static void select(ComboBox<Quantity> box, String key) {
    box.getItems().stream().filter(q -> q.key().equals(key)).findFirst().ifPresent(box::setValue);
  }

  private VBox field(String key, javafx.scene.Node control) {
    return labelled(new Label(words.get(key)), control);
  }

  private static VBox labelled(Label label, javafx.scene.Node control) {
    label.getStyleClass().add("note");
    label.setLabelFor(control);
    VBox field = new VBox(label, control);
    field.getStyleClass().add("field");
    return field;
  }

  private static HBox row(VBox... fields) {
    HBox row = new HBox(fields);
    row.getStyleClass().add("field-row");
    for (VBox field : fields) {
      HBox.setHgrow(field, Priority.ALWAYS);
      field.setPrefWidth(1);
      field.setMinWidth(0);
    }
    return row;
  }
}
