package org.comparanda.gui.caliper;

import java.util.List;
import java.util.function.LongSupplier;
import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.util.Duration;
import org.comparanda.capture.BurstDetector;

/** Listens to what is typed on a node and tells a caliper from a hand. */
public final class Listening {
  private static final char BACKSPACE = '\b';
  private static final char ESCAPE = 27;
  private static final char DELETE = 127;

  /** Who is told. */
  public interface Ear {
    /** One character of a hand; a line end is {@code \n}. */
    void hand(char character);

    /** A burst of a caliper, as it came. */
    void burst(String text);
  }

  private final Ear ear;
  private final LongSupplier nanos;
  private final BurstDetector detector = new BurstDetector();
  private boolean began;
  private final PauseTransition pause =
      new PauseTransition(Duration.millis(BurstDetector.PAUSE.toMillis() + 5.0));

  /**
   * @param nanos a clock that only goes forward
   */
  public Listening(Node node, LongSupplier nanos, Ear ear) {
    this.ear = ear;
    this.nanos = nanos;
    node.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
    node.addEventFilter(KeyEvent.KEY_PRESSED, this::tab);
    node.addEventFilter(KeyEvent.KEY_PRESSED, this::presses);
    node.addEventFilter(KeyEvent.KEY_RELEASED, this::presses);
    pause.setOnFinished(event -> heard(detector.quiet(nanos.getAsLong())));
  }

  /** Tells what was collected, without waiting for the pause after it. */
  public void flush() {
    heard(detector.quiet(Long.MAX_VALUE));
  }

  /** A Tab right behind other characters ends a caliper's value; a hand's Tab moves the focus. */
  private void tab(KeyEvent event) {
    long now = nanos.getAsLong();
    if (event.getCode() == KeyCode.TAB && detector.collecting(now)) {
      event.consume();
      heard(detector.typed('\t', now));
      pause.playFromStart();
    }
  }

  /**
   * Enter and blank would press a button whoever sent them; they come again as characters, which
   * tells a caliper's from a hand's.
   */
  private void presses(KeyEvent event) {
    boolean key = event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE;
    if (key && event.getTarget() instanceof ButtonBase) {
      event.consume();
      began = began || event.getEventType() == KeyEvent.KEY_PRESSED;
    }
  }

  /** Whether a key began elsewhere, and its character only arrives where the focus went. */
  private boolean beganElsewhere(KeyEvent event, char c) {
    boolean here = began;
    began = began && c != '\r' && c != '\n' && c != ' ';
    return event.getTarget() instanceof ButtonBase && (c == '\r' || c == '\n' || c == ' ') && !here;
  }

  private void typed(KeyEvent event) {
    event.consume();
    if (event.isControlDown() || event.isAltDown() || event.isMetaDown()) {
      return;
    }
    for (char c : event.getCharacter().toCharArray()) {
      boolean means = c != BACKSPACE && c != ESCAPE && c != DELETE && c != '\t';
      if (means && !beganElsewhere(event, c)) {
        heard(detector.typed(c, nanos.getAsLong()));
        pause.playFromStart();
      }
    }
  }

  private void heard(List<BurstDetector.Heard> heard) {
    for (BurstDetector.Heard one : heard) {
      if (one instanceof BurstDetector.Key key) {
        ear.hand(key.character());
      } else if (one instanceof BurstDetector.Burst burst) {
        ear.burst(burst.text());
      }
    }
  }
}
