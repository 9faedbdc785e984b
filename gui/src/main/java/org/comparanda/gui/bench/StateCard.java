package org.comparanda.gui.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.collections.SetChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.gui.text.Words;

/** State of the bone: fusion of each end first, then what happened to it. */
final class StateCard extends VBox {
  private final StateViewModel state;
  private final Words words;
  private final HBox ends = new HBox();

  StateCard(StateViewModel state, Words words) {
    this.state = state;
    this.words = words;
    getStyleClass().addAll("card", "state-card");
    Label title = new Label(words.get("state"));
    title.getStyleClass().add("title");
    Label why = new Label(words.get("state.why"));
    why.getStyleClass().add("note");
    why.setWrapText(true);
    ends.getStyleClass().add("choices");
    Label happened = new Label(words.get("state.flags"));
    happened.getStyleClass().add("note");
    getChildren().addAll(title, why, ends, happened, flags());
    state.elementProperty().addListener((o, was, is) -> showEnds());
    showEnds();
  }

  private void showEnds() {
    List<String> names = state.elementProperty().get().map(e -> e.growingEnds()).orElse(List.of());
    ends.getChildren().clear();
    if (names.size() > 0) {
      ends.getChildren().add(end("fusion-proximal", names.get(0), state.proximalProperty()));
    }
    if (names.size() > 1) {
      ends.getChildren().add(end("fusion-distal", names.get(1), state.distalProperty()));
    }
    if (names.isEmpty()) {
      Label none = new Label(words.get("fusion.none"));
      none.getStyleClass().add("note");
      ends.getChildren().add(none);
    }
  }

  private Choice<Fusion> end(
      String id, String name, javafx.beans.property.Property<Fusion> property) {
    return new Choice<>(
            id,
            words.get("fusion.end", name),
            Arrays.asList(Fusion.values()),
            f -> words.get("fusion." + f.name()))
        .bind(property);
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
  static String summary(StateViewModel state, Words words) {
    String flags =
        state.flags().stream()
            .sorted()
            .map(f -> words.get("flag." + f.name()))
            .reduce((a, b) -> a + ", " + b)
            .orElse("");
    List<String> names = state.elementProperty().get().map(e -> e.growingEnds()).orElse(List.of());
    String ends =
        Optional.of(names)
            .filter(n -> !n.isEmpty())
            .map(
                n ->
                    Stream.of(state.proximalProperty().get(), state.distalProperty().get())
                        .limit(n.size())
                        .distinct()
                        .map(f -> words.get("fusion." + f.name()))
                        .collect(Collectors.joining(" / ")))
            .orElse("");
    return ends.isEmpty() || flags.isEmpty() ? ends + flags : ends + ", " + flags;
  }
}
