package org.comparanda.gui.bench;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.text.Words;

/** The question that STOP asks once; and the card of a bone that was set aside. */
final class StopCard {
  private StopCard() {}

  /** "Could this bone be human?" */
  static VBox question(ReadingsViewModel readings, Words words) {
    Button yes = new Button(words.get("stop.yes"));
    yes.setId("stop-yes");
    yes.getStyleClass().setAll("record");
    yes.setOnAction(event -> readings.pressed(NamedKey.ENTER));
    Button no = new Button(words.get("stop.no"));
    no.setId("stop-no");
    no.getStyleClass().setAll("stop");
    no.setOnAction(event -> readings.pressed(NamedKey.ESCAPE));
    HBox buttons = new HBox(yes, no);
    buttons.getStyleClass().add("stop-buttons");
    VBox card =
        new VBox(
            line(words.get("stop.question"), "answer"), line(words.get("stop.then"), ""), buttons);
    card.setId("stop-question");
    card.getStyleClass().addAll("card", "stop-card");
    return card;
  }

  /** What to do with a bone that was set aside. */
  static VBox aside(Words words, String contact) {
    VBox card =
        new VBox(
            line(words.get("stop.aside"), "answer"),
            line(words.get("stop.aside.what"), ""),
            line(words.get("stop.contact.title"), "strong"),
            line(contact, ""));
    card.setId("stop-aside");
    card.getStyleClass().addAll("card", "stop-card");
    return card;
  }

  private static Label line(String text, String style) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.getStyleClass().add(style);
    label.setMinHeight(javafx.scene.layout.Region.USE_PREF_SIZE);
    return label;
  }
}
