package org.comparanda.gui.pictures;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;

/**
 * What is painted on a canvas, looked at pixel by pixel. Every mark that is more than a breath must
 * stand out from the ground, by itself or by an edge around it (W3C, WCAG 2.1, criterion 1.4.11:
 * 3). Guide lines and the faint tint of a band are a breath: nobody needs them to read the picture.
 */
final class Painted {
  private static final double MARK = 3;
  private static final double BREATH = 1.45;

  /** A bar is this thick at most, so its edge lies no farther from any of its pixels. */
  private static final int EDGE_NEAR = 9;

  private final int width;
  private final int height;
  private final boolean[] strong;
  private final boolean[] faint;

  private Painted(int[] pixels, int width, int height, Color ground) {
    this.width = width;
    this.height = height;
    strong = new boolean[pixels.length];
    faint = new boolean[pixels.length];
    for (int i = 0; i < pixels.length; i++) {
      int p = pixels[i];
      double ratio = Seen.contrast(Color.rgb(p >> 16 & 0xFF, p >> 8 & 0xFF, p & 0xFF), ground);
      strong[i] = ratio >= MARK;
      faint[i] = ratio > BREATH && !strong[i];
    }
  }

  /** Looks at a canvas as it lies on its ground. */
  static Painted on(Canvas canvas, Color ground) {
    SnapshotParameters plain = new SnapshotParameters();
    plain.setFill(ground);
    WritableImage seen = canvas.snapshot(plain, null);
    int wide = (int) seen.getWidth();
    int high = (int) seen.getHeight();
    int[] pixels = new int[wide * high];
    seen.getPixelReader()
        .getPixels(0, 0, wide, high, PixelFormat.getIntArgbInstance(), pixels, 0, wide);
    return new Painted(pixels, wide, high, ground);
  }

  /** Places of marks without a pixel that stands out near them, a few of them. */
  List<String> withoutEdge() {
    List<String> found = new ArrayList<>();
    for (int y = 0; y < height; y += 3) {
      for (int x = 0; x < width && found.size() < 5; x += 3) {
        if (faint[y * width + x] && !strongNear(x, y)) {
          found.add("painted faintly at " + x + ", " + y);
        }
      }
    }
    return found;
  }

  private boolean strongNear(int x, int y) {
    for (int j = Math.max(0, y - EDGE_NEAR); j <= Math.min(height - 1, y + EDGE_NEAR); j++) {
      for (int i = Math.max(0, x - EDGE_NEAR); i <= Math.min(width - 1, x + EDGE_NEAR); i++) {
        if (strong[j * width + i]) {
          return true;
        }
      }
    }
    return false;
  }
}
