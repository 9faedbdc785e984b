package org.comparanda.gui.sizedesk;

import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;

/** The left side: what is asked, the reading, which animals; the rest behind a button. */
final class AskPanel extends ScrollPane {
  private final SizeDeskViewModel model;
  private final Words words;
  private final QuantityBox predict;
  private final QuantityBox from;
  private final Label definition = new Label();
  private final Label readingLabel = new Label();
  private final VBox content = new VBox();
  private boolean settling;

  AskPanel(SizeDeskViewModel model, Words words, Locale locale, FileDialogs files) {
    this.model = model;
    this.words = words;
    predict = new QuantityBox("predict", model.quantities());
    from = new QuantityBox("from", model.quantities());
    predict.setOnAction(event -> pairChosen());
    from.setOnAction(event -> pairChosen());
    getStyleClass().addAll("plain-scroll", "ask-scroll");
    setFitToWidth(true);
    setFitToHeight(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    setFocusTraversable(false);
    Fields fields = new Fields(words);
    TaxonPicker picker = new TaxonPicker(model, words);
    VBox taxa = fields.named("ask.taxa", picker);
    VBox.setVgrow(picker, Priority.ALWAYS);
    VBox.setVgrow(taxa, Priority.ALWAYS);
    MorePanel more = new MorePanel(model, words, locale, files);
    content.getStyleClass().addAll("card", "ask");
    content
        .getChildren()
        .addAll(
            fields.named("ask.predict", predict),
            measured(fields),
            readings(fields),
            new FurtherPanel(model, words),
            Fields.sentence("problem", "warning", model.readings().problemProperty()),
            taxa,
            moreButton(more),
            more);
    setContent(content);
    model.askProperty().addListener((o, was, is) -> show(is));
    show(model.askProperty().get());
  }

  private VBox measured(Fields fields) {
    definition.setId("definition");
    definition.getStyleClass().add("note");
    definition.setWrapText(true);
    definition.setMinHeight(USE_PREF_SIZE);
    definition.visibleProperty().bind(definition.textProperty().isNotEmpty());
    definition.managedProperty().bind(definition.visibleProperty());
    VBox field = fields.named("ask.from", from);
    field.getChildren().add(definition);
    return field;
  }

  private HBox readings(Fields fields) {
    TextField reading = new TextField();
    reading.setId("reading");
    reading.getStyleClass().add("reading-field");
    reading.setPromptText(words.get("ask.reading.prompt"));
    reading.textProperty().bindBidirectional(model.readings().readingProperty());
    readingLabel.setText(words.get("ask.reading"));
    TextField own = new TextField();
    own.setId("own");
    own.setPromptText(words.get("ask.own.prompt"));
    own.textProperty().bindBidirectional(model.readings().ownProperty());
    return Fields.row(
        Fields.under(readingLabel, Fields.typed(reading, model.readings()::read)),
        fields.named("ask.own", Fields.typed(own, model.readings()::read)));
  }

  private ToggleButton moreButton(MorePanel more) {
    ToggleButton button = new ToggleButton();
    button.setId("more");
    button.getStyleClass().setAll("quiet", "more");
    button.setMaxWidth(Double.MAX_VALUE);
    button
        .textProperty()
        .bind(button.selectedProperty().map(open -> words.get(open ? "more.close" : "more.open")));
    more.visibleProperty().bind(button.selectedProperty());
    more.managedProperty().bind(button.selectedProperty());
    return button;
  }

  private void pairChosen() {
    if (!settling) {
      predict.chosen().ifPresent(p -> from.chosen().ifPresent(f -> model.askFor(p.key(), f.key())));
    }
  }

  private void show(Optional<SizeAsk> ask) {
    settling = true;
    content.setDisable(ask.isEmpty());
    ask.ifPresent(
        a -> {
          predict.select(a.predict());
          from.select(a.from());
          definition.setText(from.chosen().map(Quantity::definition).orElse(""));
          String unit = from.chosen().map(Quantity::unit).orElse("");
          readingLabel.setText(
              unit.isEmpty() ? words.get("ask.reading") : words.get("ask.reading.unit", unit));
        });
    settling = false;
  }
}
