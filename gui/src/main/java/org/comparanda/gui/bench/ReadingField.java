package org.comparanda.gui.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import javafx.animation.PauseTransition;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.util.Duration;
import org.comparanda.capture.BurstDetector;
import org.comparanda.capture.NamedKey;

/**
 * The field that a hand or a caliper types into. It shows what the view model holds; every
 * character goes through the detector first, which tells a caliper from a hand.
 */
final class ReadingField extends TextField {
  private static final Map<KeyCode, NamedKey> NAMED =
      Map.of(
          KeyCode.BACK_SPACE, NamedKey.BACKSPACE,
          KeyCode.ESCAPE, NamedKey.ESCAPE,
          KeyCode.F1, NamedKey.DEFINITION);
  private static final char BACKSPACE = '\b';
  private static final char ESCAPE = 27;
  private static final char DELETE = 127;

  private final ReadingsViewModel readings;
  private final LongSupplier nanos;
  private final BurstDetector detector = new BurstDetector();
  private final PauseTransition pause =
      new PauseTransition(Duration.millis(BurstDetector.PAUSE.toMillis() + 5.0));

  /**
   * @param nanos a clock that only goes forward
   */
  ReadingField(ReadingsViewModel readings, String spoken, LongSupplier nanos) {
    this.readings = readings;
    this.nanos = nanos;
    setId("reading");
    getStyleClass().add("reading-field");
    setAccessibleText(spoken);
    addEventFilter(KeyEvent.KEY_TYPED, this::typed);
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    pause.setOnFinished(event -> heard(detector.quiet(nanos.getAsLong())));
    readings.fieldProperty().addListener((o, was, is) -> show(is.text()));
  }

  @Override
  public void paste() {
    Optional.ofNullable(Clipboard.getSystemClipboard().getString()).ifPresent(readings::burst);
  }

  private void show(String text) {
    setText(text);
    positionCaret(text.length());
  }

  private void typed(KeyEvent event) {
    event.consume();
    if (event.isControlDown() || event.isAltDown() || event.isMetaDown()) {
      return;
    }
    for (char c : event.getCharacter().toCharArray()) {
      if (c != BACKSPACE && c != ESCAPE && c != DELETE && c != '\t') {
        heard(detector.typed(c, nanos.getAsLong()));
        pause.playFromStart();
      }
    }
  }

  private void pressed(KeyEvent event) {
    NamedKey key = NAMED.get(event.getCode());
    if (key != null) {
      event.consume();
      heard(detector.quiet(Long.MAX_VALUE));
      readings.pressed(key);
    }
  }

  private void heard(List<BurstDetector.Heard> heard) {
    for (BurstDetector.Heard one : heard) {
      if (one instanceof BurstDetector.Key key) {
        hand(key.character());
      } else if (one instanceof BurstDetector.Burst burst) {
        readings.burst(burst.text());
      }
    }
  }

  private void hand(char character) {
    if (character == '\n' || character == '\r') {
      readings.pressed(NamedKey.ENTER);
    } else {
      readings.typed(character);
    }
  }
}
