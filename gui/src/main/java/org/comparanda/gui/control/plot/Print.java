package org.comparanda.gui.control.plot;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/**
 * A drawing for print, on white. SVG and PDF are vectors; PNG has 600 pixels to the inch, fewer
 * where the picture would not fit a canvas.
 *
 * @param width points
 * @param height points
 * @param drawing draws it with whatever pen the medium has
 */
public record Print(double width, double height, Consumer<Pen> drawing) {
  /** Text width of a journal page, 170 mm, in points. */
  public static final double PAGE_WIDTH = 482;

  /** Size of the letters, points. */
  public static final double TEXT = 8;

  /** The letters that PNG is written with. */
  public static final String FAMILY = "SansSerif";

  private static final double PNG_SCALE = 600 / 72.0;
  private static final double MOST_PIXELS = 4096;

  /**
   * Writes the file, replacing an older one. PNG must be asked for on the JavaFX thread.
   *
   * <p>Errors: {@link UncheckedIOException} if the file can't be written
   */
  public void write(FigureExport.Format format, Path file) {
    try {
      switch (format) {
        case SVG -> Files.write(file, svg().getBytes(StandardCharsets.UTF_8));
        case PDF -> Files.write(file, pdf());
        case PNG -> Files.write(file, png());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The document as SVG. */
  public String svg() {
    SvgPen pen = new SvgPen(width, height);
    drawing.accept(pen);
    return pen.document();
  }

  byte[] pdf() {
    PdfPen pen = new PdfPen(width, height);
    drawing.accept(pen);
    return pen.document();
  }

  private byte[] png() throws IOException {
    double scale = Math.min(PNG_SCALE, MOST_PIXELS / Math.max(width, height));
    Canvas canvas = new Canvas(width * scale, height * scale);
    canvas.getGraphicsContext2D().scale(scale, scale);
    drawing.accept(new CanvasPen(canvas.getGraphicsContext2D(), FAMILY));
    WritableImage picture = canvas.snapshot(new SnapshotParameters(), null);
    BufferedImage image = SwingFXUtils.fromFXImage(picture, null);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, "png", bytes);
    return bytes.toByteArray();
  }
}
