package org.comparanda.gui.capture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.comparanda.capture.FieldState;
import org.comparanda.capture.NotPossible;
import org.comparanda.capture.warning.Warning;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;

/** What the person should know of the field: a refusal, what is odd, the reasons to choose from. */
public final class Notices extends VBox {
  private final ReadingsViewModel readings;
  private final Words words;
  private final Numbers numbers;

  public Notices(ReadingsViewModel readings, Words words, Numbers numbers) {
    this.readings = readings;
    this.words = words;
    this.numbers = numbers;
    getStyleClass().add("notices");
    readings.fieldProperty().addListener((o, was, is) -> show());
    readings.messageProperty().addListener((o, was, is) -> show());
    readings.warningsProperty().addListener((o, was, is) -> show());
    readings.besideProperty().addListener((o, was, is) -> show());
    show();
  }

  private void show() {
    getChildren().clear();
    FieldState state = readings.fieldProperty().get();
    if (state.showing() == FieldState.Showing.REASONS) {
      getChildren().add(reasons());
      return;
    }
    String beside = readings.besideProperty().get();
    if (!beside.isEmpty()) {
      getChildren().add(new WrappedLabel(beside, "beside"));
    }
    String message = readings.messageProperty().get();
    if (!message.isBlank()) {
      getChildren().add(new WrappedLabel(message, "notice"));
    }
    shown(readings.warningsProperty().get())
        .forEach(warning -> getChildren().add(new WrappedLabel(said(warning), "notice")));
  }

  /** The proposal that Plus takes, and the first warning without one. */
  private static List<Warning> shown(List<Warning> all) {
    List<Warning> shown = new ArrayList<>();
    all.stream().filter(w -> w.proposal().isPresent()).findFirst().ifPresent(shown::add);
    all.stream().filter(w -> w.proposal().isEmpty()).findFirst().ifPresent(shown::add);
    return shown;
  }

  private String said(Warning warning) {
    return warning
        .proposal()
        .map(
            mm ->
                words.said(warning.sentence())
                    + " "
                    + words.get("proposal", numbers.upTo(mm.mm(), 2)))
        .orElse(words.said(warning.sentence()));
  }

  private Node reasons() {
    FlowPane all = new FlowPane();
    all.getStyleClass().add("hints");
    all.getChildren().add(KeyHints.label(words.get("why.notpossible"), "strong"));
    for (NotPossible reason : NotPossible.values()) {
      all.getChildren()
          .add(
              KeyHints.hint(
                  Integer.toString(reason.number()), words.get("notpossible." + reason.name())));
    }
    all.getChildren().add(KeyHints.hint("- -", words.get("key.stop")));
    return all;
  }
}
