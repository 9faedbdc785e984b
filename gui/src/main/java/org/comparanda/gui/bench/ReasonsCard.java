package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.statistics.Interval;
import org.comparanda.statistics.Proportion;
import org.comparanda.suggestion.MethodScore;
import org.comparanda.suggestion.NextMeasurement;
import org.comparanda.suggestion.SecondOpinions;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.suggestion.Trial;

/**
 * The reasons in full, in place of the picture: why, how often such answers were right in the trial
 * of this very set (both rates), the calibrated list, and what to measure next.
 */
final class ReasonsCard extends StackPane {
  private final Words words;
  private final Numbers numbers;
  private final VBox content = new VBox();

  ReasonsCard(BenchViewModel bench, Words words, Numbers numbers) {
    this.words = words;
    this.numbers = numbers;
    setId("reasons");
    // as tall as the picture that it stands for, never taller: the rest scrolls
    setMinHeight(0);
    setPrefHeight(0);
    getStyleClass().addAll("card", "reasons-card");
    content.getStyleClass().add("reasons");
    PlainScroll scroll = new PlainScroll(content);
    scroll.setAccessibleText(words.get("why.title"));
    getChildren().add(scroll);
    bench.findingProperty().addListener((o, was, is) -> showWhenSeen(bench));
    bench.afterwardsProperty().addListener((o, was, is) -> showWhenSeen(bench));
    visibleProperty().addListener((o, was, is) -> showWhenSeen(bench));
    show(bench.findingProperty().get(), bench.afterwardsProperty().get());
  }

  private void showWhenSeen(BenchViewModel bench) {
    if (isVisible()) {
      show(bench.findingProperty().get(), bench.afterwardsProperty().get());
    }
  }

  private void show(Optional<Finding> finding, Afterwards more) {
    content.getChildren().clear();
    if (finding.isEmpty()) {
      content.getChildren().add(line(words.get("why.none"), List.of(), "small"));
      return;
    }
    Suggestion s = finding.get().suggestion();
    List<String> names = AnswerCard.names(s);
    heading("why.title");
    s.details()
        .forEach(detail -> content.getChildren().add(line(words.said(detail), names, "small")));
    s.warnings()
        .forEach(warning -> content.getChildren().add(line(words.said(warning), names, "small")));
    content.getChildren().add(line(words.said(s.basis().method()), List.of(), "small"));
    more.trial().ifPresent(trial -> trial(trial, names));
    calibrated(s, more.trial(), names);
    next(s.next());
    more.opinions().ifPresent(this::opinions);
  }

  private void trial(Trial trial, List<String> names) {
    heading("why.trial");
    GridPane table = new GridPane();
    table.setId("hit-table");
    table.getStyleClass().add("hit-table");
    ColumnConstraints wide = new ColumnConstraints();
    wide.setHgrow(Priority.ALWAYS);
    table.getColumnConstraints().addAll(wide, wide, wide);
    table.addRow(0, head("why.taxon"), head("why.true"), head("why.called"));
    for (Trial.TaxonRate rate : trial.taxa()) {
      table.addRow(
          table.getRowCount(),
          line(rate.taxon().value(), names, "small"),
          line(rate(rate.hits()), List.of(), "small"),
          line(rate(rate.called()), List.of(), "small"));
    }
    content.getChildren().add(table);
    content
        .getChildren()
        .add(line(words.get("why.all", rate(trial.hits()), trial.animals()), names, "small"));
  }

  private void calibrated(Suggestion s, Optional<Trial> trial, List<String> names) {
    if (s.calibratedList().isEmpty() && s.calibratedLabel().isBlank()) {
      return;
    }
    heading("why.calibrated");
    String listed =
        s.calibratedList().stream().map(t -> t.value()).collect(Collectors.joining(", "));
    content
        .getChildren()
        .add(line(listed.isEmpty() ? words.get("why.calibrated.empty") : listed, names, "small"));
    content.getChildren().add(line(words.said(s.calibratedLabel()), names, "small"));
    trial
        .flatMap(t -> t.calibratedList().value())
        .ifPresent(
            quality ->
                content
                    .getChildren()
                    .add(
                        line(
                            words.get(
                                "why.calibrated.kept",
                                rate(quality.holdsTruth()),
                                numbers.fixed(quality.meanLength(), 2)),
                            List.of(),
                            "small")));
  }

  private void next(List<NextMeasurement> next) {
    heading("why.next");
    if (next.isEmpty()) {
      content.getChildren().add(line(words.get("next.none"), List.of(), "small"));
    }
    next.forEach(
        n ->
            content
                .getChildren()
                .add(
                    line(
                        words.get("next", n.measurement().value(), n.sentence()),
                        List.of(),
                        "small")));
  }

  private void opinions(SecondOpinions opinions) {
    heading("why.methods");
    GridPane table = new GridPane();
    table.setId("methods-table");
    table.getStyleClass().add("hit-table");
    table.addRow(0, head("why.method"), head("why.right"), head("why.log"));
    for (MethodScore score : opinions.methods()) {
      table.addRow(
          table.getRowCount(),
          line(words.get("method." + score.method()), List.of(), "small"),
          line(
              score.judgedNone() ? words.get("why.method.unfit") : rate(score.hits()),
              List.of(),
              "small"),
          line(score.judgedNone() ? "" : numbers.fixed(score.logScore(), 2), List.of(), "small"));
    }
    content.getChildren().add(table);
    content
        .getChildren()
        .add(
            line(
                words.get("why.methods.note", opinions.folds(), opinions.byRule()),
                List.of(),
                "small"));
  }

  private String rate(Proportion rate) {
    if (rate.tries() == 0) {
      return words.get("why.rate.none");
    }
    Interval limits = rate.wilson(0.95);
    return words.get(
        "why.rate",
        rate.hits(),
        rate.tries(),
        numbers.fixed(100 * limits.lower(), 0),
        numbers.fixed(100 * limits.upper(), 0));
  }

  private void heading(String key) {
    Label label = new Label(words.get(key));
    label.getStyleClass().add("strong");
    content.getChildren().add(label);
  }

  private Node head(String key) {
    Label label = new Label(words.get(key));
    label.getStyleClass().add("note");
    label.setWrapText(true);
    return label;
  }

  private static Node line(String text, List<String> names, String style) {
    Sentence sentence = new Sentence(style);
    sentence.show(text, names);
    return sentence;
  }
}
