package org.comparanda.gui.caliper;

import java.util.List;
import java.util.function.LongSupplier;
import javafx.animation.PauseTransition;
import javafx.scene.Node;
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
