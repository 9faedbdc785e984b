package org.comparanda.gui.capture;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.text.Words;

/** "Could this bone be human?", asked once. */
final class StopQuestion extends VBox {
  StopQuestion(ReadingsViewModel readings, Words words) {
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
    getChildren()
        .addAll(
            line(words.get("stop.question"), "answer"), line(words.get("stop.then"), ""), buttons);
    setId("stop-question");
    getStyleClass().addAll("card", "stop-card");
  }

  private static Label line(String text, String style) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.getStyleClass().add(style);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
