package org.comparanda.gui.sizedesk;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.PublishedEquation;

/** One published equation: its value for the bone, and how far it is off on the shelf. */
final class EquationsPage extends ScrollPane {
  private final EquationsViewModel model;
  private final Words words;
  private final VBox said = new VBox();
  private final GridPane facts = new GridPane();
  private final Label measuredLabel = new Label();

  EquationsPage(SizeDeskViewModel desk, Words words, FileDialogs files) {
    this.model = desk.equations();
    this.words = words;
    setId("equations");
    getStyleClass().add("plain-scroll");
    setFitToWidth(true);
    said.getStyleClass().add("said");
    facts.getStyleClass().add("facts");
    VBox content =
        new VBox(
            choice(files),
            Fields.sentence("equation-problem", "warning", model.problemProperty()),
            said,
            facts);
    content.getStyleClass().add("diagnostics");
    setContent(content);
    Pages.follow(this, model::open, model::close);
    model.shownProperty().addListener((o, was, is) -> show(is));
    model.chosenProperty().addListener((o, was, is) -> name(is));
    name(model.chosenProperty().get());
    show(model.shownProperty().get());
  }

  private HBox choice(FileDialogs files) {
    ComboBox<PublishedEquation> box = new ComboBox<>();
    box.setId("equation");
    box.setItems(model.known());
    box.setConverter(Fields.says(box, PublishedEquation::name));
    box.setMaxWidth(Double.MAX_VALUE);
    model.chosenProperty().addListener((o, was, is) -> is.ifPresent(box::setValue));
    model.chosenProperty().get().ifPresent(box::setValue);
    box.setOnAction(
        event ->
            Optional.ofNullable(box.getValue())
                .filter(e -> !model.chosenProperty().get().equals(Optional.of(e)))
                .ifPresent(model::choose));
    TextField measured = new TextField();
    measured.setId("equation-reading");
    measured.getStyleClass().add("equation-reading");
    measured.textProperty().bindBidirectional(model.measuredProperty());
    Fields.typed(measured, model::read);
    Button own = new Button(words.get("equation.own"));
    own.setId("equation-own");
    own.setOnAction(event -> files.equations().get().ifPresent(model::addFrom));
    VBox which = new Fields(words).named("equation.which", box);
    HBox.setHgrow(which, Priority.ALWAYS);
    HBox row = new HBox(which, Fields.under(measuredLabel, measured), own);
    row.getStyleClass().add("equation-row");
    return row;
  }

  private void name(Optional<PublishedEquation> equation) {
    measuredLabel.setText(
        equation
            .map(
                e ->
                    words.get(
                        "equation.measured", e.predictor().element() + " " + e.predictor().code()))
            .orElse(words.get("ask.reading")));
  }

  private void show(EquationShown shown) {
    said.getChildren().clear();
    said.getChildren().add(text(shown.answer(), "equation-answer"));
    shown.onShelf().forEach(s -> said.getChildren().add(text(s, "check-found")));
    shown.cautions().forEach(c -> said.getChildren().add(text(c, "grey")));
    facts.getChildren().clear();
    for (int i = 0; i < shown.facts().size(); i++) {
      Label label = new Label(shown.facts().get(i).label());
      label.getStyleClass().add("note");
      label.setMinWidth(USE_PREF_SIZE);
      facts.add(label, 0, i);
      facts.add(text(shown.facts().get(i).text(), "check-found"), 1, i);
    }
  }

  private static Label text(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    label.setId(style.equals("equation-answer") ? style : null);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }
}
