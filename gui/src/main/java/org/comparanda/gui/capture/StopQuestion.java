package org.comparanda.gui.capture;

import java.util.function.LongSupplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.caliper.Answering;
import org.comparanda.gui.control.WrappedLabel;
import org.comparanda.gui.text.Words;

/**
 * "Could this bone be human?", asked once. 1 says yes, 2 or a dash or Escape no, Enter what has the
 * focus, which is no at first. A caliper answers nothing.
 */
final class StopQuestion extends VBox {
  private final Button yes;
  private final Button no;

  /**
   * @param nanos a clock that only goes forward, for telling a caliper from a hand
   */
  StopQuestion(ReadingsViewModel readings, Words words, LongSupplier nanos) {
    yes = button("stop-yes", "1", words.get("stop.yes"), "record");
    yes.setOnAction(event -> readings.pressed(NamedKey.ENTER));
    no = button("stop-no", "2", words.get("stop.no"), "stop");
    no.setOnAction(event -> readings.pressed(NamedKey.ESCAPE));
    HBox buttons = new HBox(yes, no);
    buttons.getStyleClass().add("stop-buttons");
    getChildren()
        .addAll(
            new WrappedLabel(words.get("stop.question"), "answer"),
            new WrappedLabel(words.get("stop.then")),
            buttons);
    setId("stop-question");
    getStyleClass().addAll("card", "stop-card");
    addEventFilter(KeyEvent.KEY_PRESSED, this::left);
    Answering.on(this, nanos, this::answered);
  }

  private void left(KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE) {
      event.consume();
      no.fire();
    }
  }

  private void answered(int key) {
    if (key == '1') {
      yes.fire();
    } else if (key == '2' || key == '-') {
      no.fire();
    }
  }

  private static Button button(String id, String number, String text, String style) {
    Button button = new Button(text);
    button.setId(id);
    button.getStyleClass().setAll(style);
    Label key = new Label(number);
    key.getStyleClass().add("key");
    button.setGraphic(key);
    return button;
  }
}
