package org.comparanda.gui.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javafx.scene.AccessibleRole;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/** A sentence in which the names of genus and species stand in italics. */
final class Sentence extends TextFlow {
  private final List<String> styles;
  private Optional<Shown> shown = Optional.empty();

  Sentence(String... styles) {
    this.styles = List.of(styles);
    getStyleClass().add("sentence");
    setAccessibleRole(AccessibleRole.TEXT);
    setFocusTraversable(false);
  }

  /** Shows a text; these names in it are italic. */
  void show(String words, Collection<String> names) {
    Optional<Shown> now = Optional.of(new Shown(words, List.copyOf(names)));
    if (!now.equals(shown)) {
      shown = now;
      write(words.replace(" %", "\u00a0%"), names);
    }
  }

  private void write(String text, Collection<String> names) {
    List<Text> runs = new ArrayList<>();
    int from = 0;
    if (!names.isEmpty()) {
      Matcher found = anyOf(names).matcher(text);
      while (found.find()) {
        plain(text.substring(from, found.start()), runs);
        runs.add(run(found.group(), "taxon"));
        from = found.end();
      }
    }
    plain(text.substring(from), runs);
    getChildren().setAll(runs);
    setAccessibleText(text);
  }

  private record Shown(String words, List<String> names) {}

  private void plain(String text, List<Text> runs) {
    if (!text.isEmpty()) {
      runs.add(run(text, "plain"));
    }
  }

  private Text run(String words, String style) {
    Text text = new Text(words);
    text.getStyleClass().addAll(styles);
    text.getStyleClass().add(style);
    return text;
  }

  private static Pattern anyOf(Collection<String> names) {
    return Pattern.compile(
        names.stream()
            .sorted(Comparator.comparingInt(String::length).reversed())
            .map(Pattern::quote)
            .collect(Collectors.joining("|")));
  }
}
