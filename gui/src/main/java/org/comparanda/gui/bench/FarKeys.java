package org.comparanda.gui.bench;

import javafx.event.EventHandler;
import javafx.scene.control.Toggle;
import javafx.scene.input.KeyEvent;
import org.comparanda.capture.NamedKey;

/**
 * The keys of the Bench beyond the number pad, wherever the focus is.
 *
 * @param savePicture saves the falling line
 * @param whichBone opens the key to the elements
 * @param why whether the reasons are shown
 */
record FarKeys(BenchViewModel bench, Runnable savePicture, Runnable whichBone, Toggle why)
    implements EventHandler<KeyEvent> {
  @Override
  public void handle(KeyEvent event) {
    if (does(event)) {
      event.consume();
    }
  }

  private boolean does(KeyEvent event) {
    boolean shortcut = event.isShortcutDown();
    switch (event.getCode()) {
      case H -> {
        if (!shortcut || !event.isShiftDown()) {
          return false;
        }
        bench.readings().pressed(NamedKey.STOP);
      }
      case S -> {
        if (!shortcut) {
          return false;
        }
        savePicture.run();
      }
      case F1 -> {
        if (!event.isShiftDown()) {
          return false;
        }
        bench.errands().keysShownProperty().set(true);
      }
      case F2 -> why.setSelected(!why.isSelected());
      case F3 -> bench.hints().gotIt();
      case F4 -> whichBone.run();
      case PAGE_DOWN -> bench.step(1);
      case PAGE_UP -> bench.step(-1);
      default -> {
        return false;
      }
    }
    return true;
  }
}
