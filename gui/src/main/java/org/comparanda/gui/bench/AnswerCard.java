package org.comparanda.gui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;
import org.comparanda.suggestion.Suggestion;

/** The sentence that answers, first and largest; under it what it rests on. */
final class AnswerCard extends VBox {
  private static final int SHOWN = 2;

  private final BenchViewModel bench;
  private final Words words;
  private final Sentence sentence = new Sentence("answer");
  private final Label details = new Label();

  AnswerCard(BenchViewModel bench, Words words) {
    this.bench = bench;
    this.words = words;
    setId("answer");
    getStyleClass().addAll("card", "answer-card");
    details.setId("details");
    details.getStyleClass().add("grey");
    details.setWrapText(true);
    details.setMinHeight(USE_PREF_SIZE);
    getChildren().addAll(sentence, details);
    bench.findingProperty().addListener((o, was, is) -> show());
    bench.boneProperty().addListener((o, was, is) -> show());
    bench.readings().currentProperty().addListener((o, was, is) -> show());
    show();
  }

  private void show() {
    Optional<Suggestion> suggestion = bench.findingProperty().get().map(Finding::suggestion);
    sentence.show(
        suggestion.map(Suggestion::sentence).orElseGet(this::beforeTheFirst),
        suggestion.map(AnswerCard::names).orElse(List.of()));
    List<String> all = suggestion.map(AnswerCard::under).orElse(List.of());
    details.setText(
        suggestion.isPresent()
            ? String.join("  ", all.subList(0, Math.min(SHOWN, all.size())))
            : words.get("answer.how"));
    details.setTooltip(all.size() > SHOWN ? new Tooltip(String.join("\n", all)) : null);
  }

  private String beforeTheFirst() {
    if (bench.boneProperty().get().isEmpty()) {
      return words.get("answer.choose");
    }
    return bench
        .readings()
        .currentProperty()
        .get()
        .map(m -> words.get("answer.first", m.code().value(), m.name()))
        .orElse(words.get("answer.none"));
  }

  private static List<String> under(Suggestion s) {
    List<String> all = new ArrayList<>(s.details());
    all.addAll(s.warnings());
    return all;
  }

  static List<String> names(Suggestion s) {
    return s.taxa().stream()
        .map(fit -> fit.taxon().value())
        .filter(name -> name.contains(" "))
        .toList();
  }
}
