package org.comparanda.gui.pictures;

import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.Scene;
import org.comparanda.gui.app.Theme;

/**
 * A screen in one state.
 *
 * @param screen key of the screen
 * @param state what is to be seen, in words joined by hyphens
 * @param shelf which shelf stands behind it
 * @param take what a person would do to get there
 */
record Pose(String screen, String state, Shelf shelf, Consumer<Scene> take) {
  /** Which shelf stands behind it. */
  enum Shelf {
    DEMO,
    THIN,
    /** Forty invented taxa. */
    MANY,
    /** Nothing at all: no animal, no tray, one person. */
    EMPTY,
    /** The demo shelf, whose trays were called and looked at again. */
    LOOKED
  }

  Pose(String screen, String state, Consumer<Scene> take) {
    this(screen, state, Shelf.DEMO, take);
  }

  String file(Theme theme, int width, int height) {
    return "%s-%s-%s-%dx%d.png"
        .formatted(screen, state, theme.name().toLowerCase(Locale.ROOT), width, height);
  }
}
