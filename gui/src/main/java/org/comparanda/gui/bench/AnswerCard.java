package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.Term;
import org.comparanda.gui.text.Words;
import org.comparanda.suggestion.Suggestion;

/** The sentence that answers, first and largest; under it what it rests on. */
final class AnswerCard extends VBox {
  private final BenchViewModel bench;
  private final Words words;
  private final Tooltip full = new Tooltip();
  private final Sentence sentence = new Sentence("answer");
  private final Sentence sample = new Sentence("small");
  private final Sentence details = new Sentence("small");
  private final ToggleButton why = new ToggleButton();

  AnswerCard(BenchViewModel bench, Words words) {
    this.bench = bench;
    this.words = words;
    setId("answer");
    getStyleClass().addAll("card", "answer-card");
    details.setId("details");
    sample.setId("sample");
    why.setText(words.get("why.button"));
    why.setId("why");
    Words terms = words.part("terms");
    Term.explain(why, terms.get("share.why", terms.get("share"), terms.get("typicality")));
    why.getStyleClass().add("why");
    why.setMinWidth(USE_PREF_SIZE);
    HBox under = new HBox(details, why);
    under.getStyleClass().add("answer-under");
    under.setAlignment(Pos.CENTER_RIGHT);
    HBox.setHgrow(details, Priority.ALWAYS);
    getChildren().addAll(sentence, sample, under);
    bench.findingProperty().addListener((o, was, is) -> show());
    bench.boneProperty().addListener((o, was, is) -> show());
    bench.coveredProperty().addListener((o, was, is) -> show());
    bench.comingProperty().addListener((o, was, is) -> show());
    bench.readings().currentProperty().addListener((o, was, is) -> show());
    show();
  }

  /** Pressed: the reasons stand in place of the picture. */
  ToggleButton why() {
    return why;
  }

  private void show() {
    Optional<Suggestion> suggestion = bench.findingProperty().get().map(Finding::suggestion);
    sentence.show(
        suggestion.map(Suggestion::sentence).orElseGet(this::beforeTheFirst),
        suggestion.map(AnswerCard::names).orElse(List.of()));
    List<String> names = suggestion.map(AnswerCard::names).orElse(List.of());
    List<String> all = suggestion.map(this::under).orElse(List.of());
    show(sample, suggestion.map(s -> words.said(s.sampleLine())).orElseGet(this::how), names);
    show(details, all.isEmpty() ? "" : all.get(0), names);
    full.setText(String.join("\n", all));
    if (all.size() > 1) {
      Tooltip.install(details, full);
    } else {
      Tooltip.uninstall(details, full);
    }
  }

  private static void show(Sentence line, String text, List<String> names) {
    line.show(text, names);
    line.setVisible(!text.isBlank());
    line.setManaged(!text.isBlank());
  }

  private String how() {
    return words.get(bench.coveredProperty().get() ? "answer.covered.how" : "answer.how");
  }

  private String beforeTheFirst() {
    if (bench.boneProperty().get().isEmpty()) {
      return words.get("answer.choose");
    }
    if (bench.coveredProperty().get()) {
      return words.get("answer.covered");
    }
    if (bench.comingProperty().get()) {
      return words.get("answer.coming");
    }
    return bench
        .readings()
        .currentProperty()
        .get()
        .map(m -> words.get("answer.first", m.code().value(), m.name()))
        .orElse(words.get("answer.none"));
  }

  private List<String> under(Suggestion s) {
    return Stream.concat(s.details().stream(), s.warnings().stream()).map(words::said).toList();
  }

  static List<String> names(Suggestion s) {
    return s.taxa().stream()
        .map(fit -> fit.taxon().value())
        .filter(name -> name.contains(" "))
        .toList();
  }
}
