package org.comparanda.gui.pile;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.comparanda.gui.text.Words;
import org.comparanda.pile.Arrival;
import org.comparanda.pile.PileEntry;

/** The open arrival: why it lies where it lies, its stage, who waits; and what came in new. */
final class ArrivalPane extends VBox {
  private final Words words;
  private final Label title = new Label();
  private final Label facts = new Label();
  private final Label why = new Label();
  private final ComboBox<Arrival.Stage> stage = new ComboBox<>();
  private final VBox opened;

  ArrivalPane(PileViewModel model, Words words) {
    this.words = words;
    getStyleClass().add("right");
    title.getStyleClass().add("answer");
    for (Label label : new Label[] {title, facts, why}) {
      label.setWrapText(true);
      label.setMinHeight(USE_PREF_SIZE);
    }
    facts.getStyleClass().add("grey");
    stage.setId("stage");
    stage.getItems().setAll(Arrival.Stage.values());
    stage.setConverter(new StageWords());
    stage.setOnAction(
        event -> {
          if (stage.getValue() != null && stage.isFocused()) {
            model.stage(stage.getValue());
          }
        });
    TextField who = field("who", 9);
    TextField reason = field("reason", 16);
    Button ask = new Button(words.get("ask"));
    ask.setId("ask");
    ask.setMinWidth(USE_PREF_SIZE);
    ask.setOnAction(
        event -> {
          model.ask(who.getText(), reason.getText());
          reason.clear();
        });
    opened =
        new VBox(
            title,
            facts,
            why,
            labelled("stage", stage),
            line(labelled("who", who), labelled("reason", reason), ask));
    opened.getStyleClass().addAll("card", "arrival");
    Label notice = new Label();
    notice.setId("notice");
    notice.getStyleClass().add("helpful");
    notice.setWrapText(true);
    notice.textProperty().bind(model.noticeProperty());
    getChildren().addAll(opened, cameIn(model), notice);
    model.openProperty().addListener((o, was, is) -> show(is));
    show(model.openProperty().get());
  }

  private VBox cameIn(PileViewModel model) {
    Label heading = new Label(words.get("came.in"));
    heading.getStyleClass().add("strong");
    TextField number = field("number", 8);
    TextField taxon = field("new-taxon", 14);
    TextField what = field("what", 9);
    TextField from = field("from", 13);
    TextField permit = field("permit", 9);
    Button add = new Button(words.get("add"));
    add.setId("add");
    add.setMinWidth(USE_PREF_SIZE);
    add.getStyleClass().setAll("button", "record");
    add.setOnAction(
        event -> {
          model.add(
              number.getText(), taxon.getText(), what.getText(), from.getText(), permit.getText());
          number.clear(); // the next one has another
        });
    VBox form =
        new VBox(
            heading,
            line(labelled("number", number), labelled("taxon", taxon), labelled("what", what)),
            line(labelled("from", from), labelled("permit", permit), add));
    form.getStyleClass().addAll("card", "came-in");
    return form;
  }

  private void show(Optional<PileEntry> entry) {
    opened.setVisible(entry.isPresent());
    opened.setManaged(entry.isPresent());
    entry.ifPresent(
        e -> {
          Arrival a = e.arrival();
          title.setText(e.place() + ". " + a.number() + ", " + a.taxon());
          facts.setText(
              words.get("facts", a.what(), a.cameIn().toString(), a.from())
                  + (a.permit().isEmpty() ? "" : " " + words.get("facts.permit", a.permit()))
                  + (a.remarks().isEmpty() ? "" : " " + a.remarks()));
          why.setText(words.said(e.why()));
          stage.setValue(a.stage());
        });
  }

  private VBox labelled(String key, Region control) {
    Label label = new Label(words.get("field." + key));
    label.getStyleClass().add("note");
    label.setLabelFor(control);
    return new VBox(label, control);
  }

  private static TextField field(String id, int columns) {
    TextField field = new TextField();
    field.setId(id);
    field.setPrefColumnCount(columns);
    return field;
  }

  private static HBox line(Node... nodes) {
    HBox line = new HBox(nodes);
    line.getStyleClass().add("line");
    return line;
  }

  /** Stages in words. */
  private final class StageWords extends StringConverter<Arrival.Stage> {
    @Override
    public String toString(Arrival.Stage value) {
      return value == null ? "" : words.get(PileView.key("stage.", value));
    }

    @Override
    public Arrival.Stage fromString(String text) {
      throw new UnsupportedOperationException("The list is not typed into.");
    }
  }
}
