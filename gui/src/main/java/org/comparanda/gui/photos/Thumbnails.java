package org.comparanda.gui.photos;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.comparanda.photo.Photo;
import org.comparanda.photo.Photos;

/**
 * Small copies of pictures, kept beside them under the same hash and made when one is first looked
 * at. The picture itself is only read.
 */
final class Thumbnails {
  /** Twice the height that is shown, for dense screens. */
  private static final int PIXELS_HIGH = 192;

  private final Photos photos;

  Thumbnails(Photos photos) {
    this.photos = photos;
  }

  /** The small copy; empty where the picture is gone or can't be drawn. */
  Optional<Path> of(Photo photo) {
    Path small = photos.thumbnail(photo);
    Path whole = photos.file(photo);
    if (Files.exists(small)) {
      return Optional.of(small);
    }
    try {
      if (!Files.exists(whole)) {
        return Optional.empty();
      }
      BufferedImage picture = ImageIO.read(whole.toFile());
      if (picture == null) {
        return Optional.empty();
      }
      write(scaled(picture), small);
      return Optional.of(small);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** Never larger than the picture. */
  private static BufferedImage scaled(BufferedImage picture) {
    double scale = Math.min(1, PIXELS_HIGH / (double) picture.getHeight());
    int width = Math.max(1, (int) Math.round(scale * picture.getWidth()));
    int height = Math.max(1, (int) Math.round(scale * picture.getHeight()));
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = small.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.drawImage(picture, 0, 0, width, height, null);
    pen.dispose();
    return small;
  }

  private static void write(BufferedImage small, Path place) throws IOException {
    Files.createDirectories(place.resolveSibling(""));
    Path unfinished = Files.createTempFile(place.resolveSibling(""), "unfinished", ".png");
    try {
      ImageIO.write(small, "png", unfinished.toFile());
      Files.move(unfinished, place, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(unfinished);
    }
  }
}
