package org.comparanda.gui.capture;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.collections.SetChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.GrowingEnd;
import org.comparanda.capture.StateQuestions;
import org.comparanda.gui.caliper.Listening;
import org.comparanda.gui.control.Choice;
import org.comparanda.gui.text.Words;

/** State of the bone: fusion of each end first, then what happened to it. */
public final class StateCard extends VBox {
  private final StateViewModel state;
  private final Words words;
  private final HBox ends = new HBox();

  private final Label question = new Label();
  private final Button keys = new Button();

  public StateCard(StateViewModel state, Words words, LongSupplier nanos, Runnable stop) {
    this.state = state;
    this.words = words;
    getStyleClass().addAll("card", "state-card");
    Label title = new Label(words.get("state"));
    title.getStyleClass().add("title");
    Label why = new Label(words.get("state.why"));
    why.getStyleClass().add("note");
    why.setWrapText(true);
    why.setMinHeight(USE_PREF_SIZE);
    ends.getStyleClass().add("choices");
    Label happened = new Label(words.get("state.flags"));
    happened.getStyleClass().add("note");
    question.setId("state-question");
    question.getStyleClass().add("strong");
    question.setWrapText(true);
    question.setMinHeight(USE_PREF_SIZE);
    keys.setId("state-keys");
    keys.getStyleClass().setAll("record");
    keys.setWrapText(true);
    keys.setMinHeight(USE_PREF_SIZE);
    keys.setOnAction(event -> state.typed('\n'));
    keys.managedProperty().bind(keys.visibleProperty());
    question.managedProperty().bind(question.visibleProperty());
    new Listening(keys, nanos, new Asked(stop));
    getChildren().addAll(title, why, question, keys, ends, happened, flags());
    state.elementProperty().addListener((o, was, is) -> showEnds());
    state.questionsProperty().addListener((o, was, is) -> showQuestion());
    showEnds();
    showQuestion();
  }

  /** Where the number pad answers. */
  public Button keys() {
    return keys;
  }

  private void showQuestion() {
    Optional<StateQuestions> asked = state.questionsProperty().get();
    question.setVisible(asked.isPresent());
    keys.setVisible(asked.isPresent());
    asked.ifPresent(q -> question.setText(said(q)));
    asked.ifPresent(
        q ->
            keys.setText(
                words.get(
                    q.allFine() ? "state.fine.is" : "state.records", StateWords.of(q, words))));
    keys.setAccessibleHelp(question.getText());
  }

  private String said(StateQuestions q) {
    if (q.asksAnEnd()) {
      return words.get("fusion.end", words.get("end." + q.ends().get(q.asked())))
          + ": "
          + numbered(StateQuestions.FUSIONS.stream().map(f -> words.get("fusion." + f)).toList());
    }
    String set =
        q.state().flags().stream()
            .sorted()
            .map(f -> words.get("flag." + f))
            .collect(Collectors.joining(", "));
    String choices =
        numbered(StateQuestions.FLAGS.stream().map(f -> words.get("flag." + f)).toList());
    return words.get("state.flags") + ": " + (set.isEmpty() ? "" : set + ". ") + choices;
  }

  /** "1 unfused, 2 fusing, …"; the tenth is 0. */
  private static String numbered(List<String> choices) {
    return IntStream.range(0, choices.size())
        .mapToObj(i -> (i + 1) % 10 + "\u00a0" + choices.get(i).replace(' ', '\u00a0'))
        .collect(Collectors.joining(", "));
  }

  /**
   * Digits answer; three dashes ask whether the bone may be human; a caliper is not listened to.
   */
  private final class Asked implements Listening.Ear {
    private final Runnable stop;
    private int dashes;

    Asked(Runnable stop) {
      this.stop = stop;
    }

    @Override
    public void hand(char character) {
      dashes = character == '-' ? dashes + 1 : 0;
      if (dashes == 3) {
        dashes = 0;
        stop.run();
      } else {
        state.typed(character);
      }
    }

    @Override
    public void burst(String text) {
      question.setText(words.get("state.burst", text.strip()));
    }
  }

  private void showEnds() {
    ends.getChildren().setAll(state.ends().stream().map(this::end).toList());
    if (state.ends().isEmpty()) {
      Label none = new Label(words.get("fusion.none"));
      none.getStyleClass().add("note");
      ends.getChildren().add(none);
    }
  }

  private Choice<Fusion> end(GrowingEnd end) {
    return new Choice<>(
            "fusion-" + end.name().toLowerCase(Locale.ROOT),
            words.get("fusion.end", words.get("end." + end)),
            Arrays.asList(Fusion.values()),
            f -> words.get("fusion." + f.name()))
        .bind(state.fusionProperty(end));
  }

  private FlowPane flags() {
    FlowPane all = new FlowPane();
    all.getStyleClass().add("flags");
    for (Flag flag : Flag.values()) {
      ToggleButton button = new ToggleButton(words.get("flag." + flag.name()));
      button.setId("flag-" + flag.name().toLowerCase(Locale.ROOT));
      button.getStyleClass().setAll("flag");
      button.setOnAction(event -> state.toggle(flag));
      state
          .flags()
          .addListener(
              (SetChangeListener<Flag>) change -> button.setSelected(state.flags().contains(flag)));
      button.setSelected(state.flags().contains(flag));
      all.getChildren().add(button);
    }
    return all;
  }

  /** The state in a few words, for the button that opens this card. */
  public static String summary(StateViewModel state, Words words) {
    String flags =
        state.flags().stream()
            .sorted()
            .map(f -> words.get("flag." + f.name()))
            .reduce((a, b) -> a + ", " + b)
            .orElse("");
    String ends =
        state.ends().stream()
            .map(end -> state.fusionProperty(end).get())
            .distinct()
            .map(f -> words.get("fusion." + f.name()))
            .collect(Collectors.joining(" / "));
    return ends.isEmpty() || flags.isEmpty() ? ends + flags : ends + ", " + flags;
  }
}
