package org.comparanda.gui.capture;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.comparanda.gui.text.Words;

/** The card of a bone that was set aside as possibly human. */
public final class StopCard {
  private StopCard() {}

  /** What to do with a bone that was set aside. */
  public static VBox aside(Words words, String contact) {
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
