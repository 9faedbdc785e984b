package org.comparanda.gui.caliper;

import java.util.function.IntConsumer;
import java.util.function.LongSupplier;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;

/**
 * A card whose buttons are answered by keys: a hand's Enter or blank presses the focused button,
 * its other keys are handed on. A caliper answers nothing, so that no value is half-read.
 */
public final class Answering implements Listening.Ear {
  private final Node card;
  private final IntConsumer key;

  private Answering(Node card, IntConsumer key) {
    this.card = card;
    this.key = key;
  }

  /**
   * Listens on a card.
   *
   * @param nanos a clock that only goes forward
   * @param key takes every character of a hand but Enter and blank
   */
  public static void on(Node card, LongSupplier nanos, IntConsumer key) {
    new Listening(card, nanos, new Answering(card, key));
  }

  @Override
  public void hand(char character) {
    if (character == '\n' || character == ' ') {
      if (card.getScene() != null && card.getScene().getFocusOwner() instanceof ButtonBase button) {
        button.fire();
      }
    } else {
      key.accept(character);
    }
  }

  @Override
  public void burst(String text) {}
}
