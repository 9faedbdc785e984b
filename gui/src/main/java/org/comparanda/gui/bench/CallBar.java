package org.comparanda.gui.bench;

import java.util.Arrays;
import java.util.List;
import javafx.beans.property.StringProperty;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Person;
import org.comparanda.tray.Qualifier;

/** The call line: qualifier, taxon, ground, person, and the one action that records. */
final class CallBar extends BorderPane {
  private final Words words;

  CallBar(BenchViewModel bench, Words words) {
    this.words = words;
    CallViewModel call = bench.call();
    getStyleClass().addAll("card", "call-bar");
    Label yours = new Label(words.get("call"));
    yours.getStyleClass().add("strong");
    yours.setMinWidth(USE_PREF_SIZE);
    ComboBox<Qualifier> qualifier = new ComboBox<>();
    qualifier.setId("qualifier");
    qualifier.setAccessibleText(words.get("call.qualifier"));
    qualifier.getItems().setAll(Arrays.asList(Qualifier.values()));
    qualifier.setConverter(
        Choice.converter(q -> q == Qualifier.NONE ? words.get("call.bare") : q.sign()));
    qualifier.valueProperty().bindBidirectional(call.qualifierProperty());
    qualifier.setMinWidth(USE_PREF_SIZE);
    ComboBox<String> taxon = typed("taxon", "call.taxon", call.names(), call.taxonProperty());
    taxon.getEditor().getStyleClass().add("taxon");
    ComboBox<String> basis = typed("basis", "call.basis", call.bases(), call.basisProperty());
    Label note = new Label();
    note.setId("call-note");
    note.getStyleClass().add("note");
    note.setWrapText(true);
    note.textProperty()
        .bind(call.recordedProperty().map(said -> said.isBlank() ? words.get("call.note") : said));
    Button record = new Button(words.get("call.record"));
    record.setId("record");
    record.getStyleClass().setAll("record");
    record.setMinWidth(USE_PREF_SIZE);
    record.setOnAction(event -> call.record());
    record.disableProperty().bind(bench.boneProperty().map(b -> b.isEmpty() || bench.stopped()));
    FlowPane line = new FlowPane(yours, qualifier, taxon, basis, person(bench), note);
    line.getStyleClass().add("call-line");
    setCenter(line);
    BorderPane.setAlignment(record, Pos.CENTER_RIGHT);
    setRight(record);
  }

  private ComboBox<Person> person(BenchViewModel bench) {
    ComboBox<Person> person = new ComboBox<>();
    person.setId("person");
    person.setAccessibleText(words.get("call.person"));
    person.getItems().setAll(bench.people());
    person.setConverter(Choice.converter(p -> p.name().isBlank() ? p.id().value() : p.name()));
    person.valueProperty().bindBidirectional(bench.personProperty());
    return person;
  }

  private ComboBox<String> typed(
      String id, String key, ObservableList<String> values, StringProperty property) {
    ComboBox<String> box = new ComboBox<>();
    box.setId(id);
    box.setEditable(true);
    box.setAccessibleText(words.get(key));
    box.setPromptText(words.get(key));
    box.getEditor().setPromptText(words.get(key));
    box.getEditor().setId(id + "-text");
    box.setMaxWidth(Double.MAX_VALUE);
    values.addListener(
        (ListChangeListener<String>)
            change -> {
              String kept = box.getEditor().getText();
              box.getItems().setAll(List.copyOf(values));
              box.getEditor().setText(kept);
            });
    box.getItems().setAll(List.copyOf(values));
    box.getEditor().textProperty().bindBidirectional(property);
    return box;
  }
}
