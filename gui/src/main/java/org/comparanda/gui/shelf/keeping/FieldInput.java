package org.comparanda.gui.shelf.keeping;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.util.StringConverter;
import org.comparanda.bone.Flag;
import org.comparanda.gui.control.Prose;
import org.comparanda.gui.text.Words;
import org.comparanda.register.CardField;

/** What a field of the card is typed or chosen with. */
final class FieldInput {
  private static final List<String> KINDS = List.of("not known", "fresh", "estimated");
  private static final Map<CardField, List<String>> CHOICES =
      Map.of(
          CardField.SOURCE, List.of("own drawer", "another house", "publication"),
          CardField.ORIGIN, List.of("", "wild", "captive"),
          CardField.EXPORT, List.of("allowed", "forbidden"),
          CardField.LENGTH_KIND, KINDS,
          CardField.MASS_KIND, KINDS);

  private final Words words;

  FieldInput(Words words) {
    this.words = words;
  }

  Node of(CardField field, StringProperty text) {
    if (field == CardField.FLAGS) {
      return flags(text);
    }
    if (field == CardField.REMARKS || field == CardField.PERMIT_WORDS) {
      Prose area = new Prose();
      area.setPrefRowCount(2);
      area.textProperty().bindBidirectional(text);
      return area;
    }
    List<String> choices = CHOICES.getOrDefault(field, List.of());
    return choices.isEmpty() ? typed(field, text) : chosen(choices, text);
  }

  private TextField typed(CardField field, StringProperty text) {
    TextField typed = new TextField();
    typed.textProperty().bindBidirectional(text);
    switch (field) {
      case LENGTH_ON, MASS_ON, HAND_OVER_BY -> typed.setPromptText(words.get("prompt.day"));
      case BODY_LENGTH -> typed.setPromptText(words.get("prompt.length"));
      case BODY_MASS -> typed.setPromptText(words.get("prompt.mass"));
      default -> typed.setPromptText("");
    }
    return typed;
  }

  private ComboBox<String> chosen(List<String> choices, StringProperty text) {
    ComboBox<String> box = new ComboBox<>();
    box.getItems().setAll(choices);
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(String choice) {
            return choice == null ? "" : words.get("choice." + choice.replace(' ', '.'));
          }

          @Override
          public String fromString(String shown) {
            return shown;
          }
        });
    box.setMaxWidth(Double.MAX_VALUE);
    box.valueProperty().bindBidirectional(text);
    return box;
  }

  private FlowPane flags(StringProperty text) {
    FlowPane pane = new FlowPane();
    pane.getStyleClass().add("flags");
    for (Flag flag : Flag.values()) {
      String word = flag.name().toLowerCase(Locale.ROOT);
      ToggleButton toggle = new ToggleButton(words.get("flag." + word));
      toggle.setId("flag-" + word);
      toggle.getStyleClass().setAll("flag");
      toggle.setOnAction(
          event -> {
            Set<String> now = new LinkedHashSet<>(said(text.get()));
            if (toggle.isSelected()) {
              now.add(word);
            } else {
              now.remove(word);
            }
            text.set(now.stream().sorted().reduce((a, b) -> a + "|" + b).orElse(""));
          });
      toggle.setSelected(said(text.get()).contains(word));
      text.addListener((o, was, is) -> toggle.setSelected(said(is).contains(word)));
      pane.getChildren().add(toggle);
    }
    return pane;
  }

  private static List<String> said(String text) {
    return Arrays.stream(text.split("\\|")).filter(w -> !w.isBlank()).toList();
  }
}
