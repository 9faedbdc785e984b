package org.comparanda.gui.bench;

import java.util.Arrays;
import java.util.List;
import java.util.function.LongSupplier;
import javafx.beans.property.StringProperty;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import org.comparanda.gui.caliper.Answering;
import org.comparanda.gui.control.Choice;
import org.comparanda.gui.control.Term;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Person;
import org.comparanda.tray.Qualifier;

/** The call line: qualifier, taxon, ground, person, and the one action that records. */
final class CallBar extends BorderPane {
  private final Words words;

  /**
   * @param nanos a clock that only goes forward, for telling a caliper from a hand
   * @param afterwards takes the focus on after a call was recorded
   */
  CallBar(BenchViewModel bench, Words words, LongSupplier nanos, Runnable afterwards) {
    this.words = words;
    CallViewModel call = bench.call();
    getStyleClass().addAll("card", "call-bar");
    setMinHeight(USE_PREF_SIZE); // a second row of it is never cut
    Label yours = new Label(words.get("call"));
    yours.getStyleClass().add("strong");
    yours.setMinWidth(USE_PREF_SIZE);
    ComboBox<Qualifier> qualifier = new ComboBox<>();
    qualifier.setId("qualifier");
    qualifier.setAccessibleText(words.get("call.qualifier"));
    Term.explain(qualifier, words.part("terms").get("qualifier"));
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
    record.setOnAction(
        event -> {
          call.record();
          if (call.called()) {
            afterwards.run();
          }
        });
    Answering.on(record, nanos, key -> {});
    record.disableProperty().bind(bench.boneProperty().map(b -> b.isEmpty() || bench.stopped()));
    call.setOnMissingTaxon(() -> taxon.getEditor().requestFocus());
    // Enter goes on to the button, which the next Enter presses: a call is never an accident.
    taxon.addEventFilter(KeyEvent.KEY_PRESSED, event -> onEnter(event, record::requestFocus));
    taxon.addEventFilter(KeyEvent.KEY_PRESSED, event -> step(event, taxon));
    TextField why = why(call, record);
    FlowPane line = new FlowPane(yours, qualifier, taxon, basis, person(bench), why, note);
    line.getStyleClass().add("call-line");
    setCenter(line);
    BorderPane.setAlignment(record, Pos.CENTER_RIGHT);
    setRight(record);
  }

  /** Comes only when a call goes against the suggestion. */
  private TextField why(CallViewModel call, Button record) {
    TextField why = new TextField();
    why.setId("why-against");
    why.setAccessibleText(words.get("call.why"));
    why.setPromptText(words.get("call.why"));
    why.textProperty().bindBidirectional(call.whyProperty());
    why.visibleProperty().bind(call.whyAskedProperty().or(call.whyProperty().isNotEmpty()));
    why.managedProperty().bind(why.visibleProperty());
    why.addEventFilter(KeyEvent.KEY_PRESSED, event -> onEnter(event, record::requestFocus));
    call.whyAskedProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                why.requestFocus();
              }
            });
    return why;
  }

  private static void onEnter(KeyEvent event, Runnable action) {
    if (event.getCode() == KeyCode.ENTER) {
      event.consume();
      action.run();
    }
  }

  /** Down and Up go through the names, the candidates first, without opening the list. */
  private static void step(KeyEvent event, ComboBox<String> box) {
    int by = event.getCode() == KeyCode.DOWN ? 1 : event.getCode() == KeyCode.UP ? -1 : 0;
    int next = box.getItems().indexOf(box.getEditor().getText()) + by;
    // The box hands each key on to its editor, and only there does it count.
    boolean typed = box.getEditor().equals(event.getTarget());
    if (by != 0 && typed && !event.isAltDown() && !box.isShowing()) {
      event.consume();
      if (next >= 0 && next < box.getItems().size()) {
        box.getEditor().setText(box.getItems().get(next));
        box.getEditor().end();
      }
    }
  }

  private ComboBox<Person> person(BenchViewModel bench) {
    ComboBox<Person> person = new ComboBox<>();
    person.setId("person");
    person.setAccessibleText(words.get("call.person"));
    Term.explain(person, words.part("terms").get("person"));
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
    Term.explain(box, words.part("terms").get(id));
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
