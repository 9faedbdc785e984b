package org.comparanda.gui.capture;

import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.caliper.Listening;

/**
 * The field that a hand or a caliper types into. It shows what the view model holds; every
 * character is listened to first, which tells a caliper from a hand.
 */
public final class ReadingField extends TextField implements Listening.Ear {
  private static final Map<KeyCode, NamedKey> NAMED =
      Map.of(
          KeyCode.BACK_SPACE, NamedKey.BACKSPACE,
          KeyCode.ESCAPE, NamedKey.ESCAPE,
          KeyCode.F1, NamedKey.DEFINITION);

  private final ReadingsViewModel readings;
  private final Listening listening;

  /**
   * @param nanos a clock that only goes forward
   */
  public ReadingField(ReadingsViewModel readings, String spoken, LongSupplier nanos) {
    this.readings = readings;
    setId("reading");
    getStyleClass().add("reading-field");
    setAccessibleText(spoken);
    listening = new Listening(this, nanos, this);
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    readings.fieldProperty().addListener((o, was, is) -> show(is.text()));
  }

  @Override
  public void paste() {
    Optional.ofNullable(Clipboard.getSystemClipboard().getString()).ifPresent(readings::burst);
  }

  @Override
  public void hand(char character) {
    if (character == '\n' || character == '\r') {
      readings.pressed(NamedKey.ENTER);
    } else {
      readings.typed(character);
    }
  }

  @Override
  public void burst(String text) {
    readings.burst(text);
  }

  private void show(String text) {
    setText(text);
    positionCaret(text.length());
  }

  private void pressed(KeyEvent event) {
    NamedKey key = NAMED.get(event.getCode());
    if (key != null) {
      event.consume();
      listening.flush();
      readings.pressed(key);
    }
  }
}
