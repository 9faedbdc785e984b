package org.comparanda.gui.oldcards;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.gui.text.Words;
import org.comparanda.oldcards.Part;
import org.comparanda.oldcards.Proposal;

/** The open card: its words marked with what they were read as, the proposal, the decision. */
final class CardPane extends VBox {
  private final Words words;
  private final OldCardsViewModel model;
  private final FlowPane text = new FlowPane();
  private final Label found = new Label();
  private final GridPane read = new GridPane();
  private final VBox remarks = new VBox();
  private final Button accept = new Button();
  private final Button alike = new Button();
  private final Button refuse = new Button();

  CardPane(OldCardsViewModel model, Words words) {
    this.model = model;
    this.words = words;
    getStyleClass().addAll("card", "open-card");
    found.getStyleClass().add("note");
    text.setId("card-text");
    text.getStyleClass().add("marked");
    read.getStyleClass().add("facts");
    remarks.getStyleClass().add("remarks");
    VBox said = new VBox(found, text, read, remarks);
    said.getStyleClass().add("said");
    ScrollPane scroll = new ScrollPane(said);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("plain-scroll");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    Label notice = new Label();
    notice.setId("notice");
    notice.getStyleClass().add("helpful");
    notice.setWrapText(true);
    notice.textProperty().bind(model.noticeProperty());
    notice.managedProperty().bind(notice.textProperty().isNotEmpty());
    getChildren().addAll(scroll, notice, decision(model));
    model.shownProperty().addListener((o, was, is) -> show(is));
    show(model.shownProperty().get());
  }

  private VBox decision(OldCardsViewModel model) {
    ComboBox<String> element = new ComboBox<>();
    element.setId("element");
    element.setEditable(true);
    element.getItems().setAll(model.elements());
    element.getEditor().textProperty().bindBidirectional(model.elementProperty());
    accept.setId("accept");
    accept.getStyleClass().setAll("button", "record");
    accept.setText(words.get("accept"));
    accept.setOnAction(event -> model.accept());
    alike.setId("accept-alike");
    alike.setOnAction(event -> model.acceptAlike());
    refuse.setId("refuse");
    refuse.setText(words.get("refuse"));
    refuse.setOnAction(event -> model.refuse());
    HBox instead =
        line(
            labelled("instead.name", field("taxon", model.taxonProperty(), 16)),
            labelled("instead.element", element),
            labelled("tray", field("tray", model.trayProperty(), 9)),
            labelled("person", field("person", model.personProperty(), 9)));
    TextField reason = field("reason", model.reasonProperty(), 16);
    reason.setPromptText(words.get("reason"));
    reason.setAccessibleText(words.get("reason"));
    VBox decision = new VBox(instead, line(accept, alike), line(reason, refuse));
    decision.getStyleClass().add("decision");
    return decision;
  }

  private static HBox line(javafx.scene.Node... nodes) {
    HBox line = new HBox(nodes);
    line.getStyleClass().add("line");
    return line;
  }

  private static TextField field(
      String id, javafx.beans.property.StringProperty text, double columns) {
    TextField field = new TextField();
    field.setId(id);
    field.setPrefColumnCount((int) columns);
    field.textProperty().bindBidirectional(text);
    return field;
  }

  private VBox labelled(String key, javafx.scene.control.Control control) {
    Label label = styled(words.get(key), "note");
    label.setLabelFor(control);
    return new VBox(label, control);
  }

  private void show(Optional<CardShown> open) {
    text.getChildren().clear();
    read.getChildren().clear();
    remarks.getChildren().clear();
    boolean waits = open.filter(s -> !s.card().accepted()).isPresent();
    accept.setDisable(!waits || open.get().said().namesHuman());
    refuse.setDisable(!waits);
    int several = waits ? open.get().alike() : 0;
    alike.setText(words.get("accept.alike", several));
    alike.setVisible(several > 1 && open.get().said().plain());
    if (open.isEmpty()) {
      found.setText(words.get("card.none"));
      return;
    }
    CardShown shown = open.get();
    found.setText(
        words.get(
            "found", shown.card().card().source(), String.valueOf(shown.card().card().row())));
    shown.stretches().forEach(s -> text.getChildren().add(marked(s)));
    proposal(shown.said());
    shown
        .said()
        .doubts()
        .forEach(d -> remarks.getChildren().add(new WrappedLabel(words.said(d), "warning")));
    shown
        .said()
        .taken()
        .forEach(t -> remarks.getChildren().add(new WrappedLabel(words.said(t), "note")));
    shown
        .card()
        .latest()
        .ifPresent(
            d ->
                remarks
                    .getChildren()
                    .add(
                        new WrappedLabel(
                            words.get(
                                "decided." + d.kind().name().toLowerCase(Locale.ROOT),
                                d.person().value(),
                                d.at().toString().substring(0, 10),
                                d.note()),
                            "strong")));
  }

  /** A word with what it was read as below it; what was not read stands in a broken frame. */
  private VBox marked(CardShown.Stretch stretch) {
    Label word = styled(stretch.text(), "word");
    word.setWrapText(true);
    boolean silent = stretch.part() == Part.PASSED_OVER;
    Label part =
        styled(
            silent ? "" : words.get("part." + stretch.part().name().toLowerCase(Locale.ROOT)),
            "part");
    VBox both = new VBox(word, part);
    both.getStyleClass()
        .add(silent ? "silent" : stretch.part() == Part.LEFT_OVER ? "left-over" : "was-read");
    return both;
  }

  private void proposal(Proposal said) {
    List<String[]> rows = new ArrayList<>();
    rows.add(
        new String[] {
          "name", said.taxon().map(t -> (t + " " + said.qualifier().sign()).strip()).orElse("–")
        });
    rows.add(new String[] {"element", said.element().map(model::named).orElse("–")});
    if (said.side() != Side.NOT_KNOWN) {
      rows.add(new String[] {"side", words.said(plain(said.side()))});
    }
    if (said.portion() != Portion.WHOLE) {
      rows.add(new String[] {"portion", words.said(plain(said.portion()))});
    }
    if (!said.flags().isEmpty()) {
      rows.add(
          new String[] {
            "flags",
            said.flags().stream()
                .map(CardPane::plain)
                .map(words::said)
                .sorted()
                .collect(Collectors.joining(", "))
          });
    }
    if (said.count() > 1) {
      rows.add(new String[] {"count", String.valueOf(said.count())});
    }
    if (!said.lengths().isEmpty()) {
      rows.add(
          new String[] {
            "lengths",
            said.lengths().entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue().asWritten())
                .collect(Collectors.joining(", "))
          });
    }
    if (!said.place().isEmpty()) {
      rows.add(new String[] {"place", said.place()});
    }
    for (int i = 0; i < rows.size(); i++) {
      read.add(styled(words.get("read." + rows.get(i)[0]), "note"), 0, i);
      Label value = styled(rows.get(i)[1], rows.get(i)[0].equals("name") ? "taxon" : "strong");
      value.setWrapText(true);
      read.add(value, 1, i);
    }
  }

  private static String plain(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static Label styled(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    return label;
  }
}
