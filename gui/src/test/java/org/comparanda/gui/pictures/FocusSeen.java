package org.comparanda.gui.pictures;

import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;

/**
 * Whether a control shows that it has the focus: the pixels on and around it that change by 3 to 1
 * when the focus comes and goes are at least as many as half its edge is long (the change of 3 to 1
 * after W3C, WCAG 2.2, criterion 2.4.13; half the edge, since ours is often a line at one side).
 */
record FocusSeen(Scene scene) {
  private static final double CHANGE = 3;
  private static final double ROUND = 4; // how far a ring may reach beyond the control

  /** The control and what lies round it, as it looks now; empty where it is not in the window. */
  Optional<WritableImage> look(Node node) {
    Bounds at = node.localToScene(node.getLayoutBounds());
    double left = Math.max(0, at.getMinX() - ROUND);
    double top = Math.max(0, at.getMinY() - ROUND);
    double right = Math.min(scene.getWidth(), at.getMaxX() + ROUND);
    double bottom = Math.min(scene.getHeight(), at.getMaxY() + ROUND);
    if (right - left < 4 || bottom - top < 4) {
      return Optional.empty();
    }
    SnapshotParameters part = new SnapshotParameters();
    part.setViewport(new Rectangle2D(left, top, right - left, bottom - top));
    return Optional.of(scene.getRoot().snapshot(part, null));
  }

  /** Whether two looks differ enough. */
  static boolean differ(WritableImage with, WritableImage without) {
    int wide = (int) Math.min(with.getWidth(), without.getWidth());
    int high = (int) Math.min(with.getHeight(), without.getHeight());
    PixelReader one = with.getPixelReader();
    PixelReader other = without.getPixelReader();
    int changed = 0;
    for (int y = 0; y < high; y++) {
      for (int x = 0; x < wide; x++) {
        Color a = one.getColor(x, y);
        Color b = other.getColor(x, y);
        if (!a.equals(b) && Seen.contrast(a, b) >= CHANGE) {
          changed++;
        }
      }
    }
    return changed >= wide + high - 4 * ROUND;
  }
}
