package org.comparanda.gui.control.plot;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/**
 * Writes a figure for print: 170 mm wide (the text width of a journal page), letters of 8 points,
 * always on white. SVG and PDF are vectors; PNG has 600 pixels to the inch.
 */
public final class FigureExport {
  static final double WIDTH = 482;
  static final double HEIGHT = 312;
  static final double TEXT = 8;
  private static final double PNG_SCALE = 600 / 72.0;

  private FigureExport() {}

  /** The kinds of file. */
  public enum Format {
    SVG,
    PDF,
    PNG;

    /** Ending of the file name, without the point. */
    public String ending() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * Writes the file, replacing an older one. PNG must be asked for on the JavaFX thread.
   *
   * <p>Errors: {@link UncheckedIOException} if the file can't be written
   */
  public static void write(Figure figure, Format format, Path file) {
    FigureDrawing drawing = FigureDrawing.of(figure, Palette.LIGHT, WIDTH, HEIGHT, TEXT);
    try {
      switch (format) {
        case SVG -> Files.write(file, svg(drawing).getBytes(StandardCharsets.UTF_8));
        case PDF -> Files.write(file, pdf(drawing));
        case PNG -> Files.write(file, png(drawing));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String svg(FigureDrawing drawing) {
    SvgPen pen = new SvgPen(WIDTH, HEIGHT);
    drawing.draw(pen);
    return pen.document();
  }

  static byte[] pdf(FigureDrawing drawing) {
    PdfPen pen = new PdfPen(WIDTH, HEIGHT);
    drawing.draw(pen);
    return pen.document();
  }

  private static byte[] png(FigureDrawing drawing) throws IOException {
    Canvas canvas = new Canvas(WIDTH * PNG_SCALE, HEIGHT * PNG_SCALE);
    canvas.getGraphicsContext2D().scale(PNG_SCALE, PNG_SCALE);
    drawing.draw(new CanvasPen(canvas.getGraphicsContext2D(), "SansSerif"));
    WritableImage picture = canvas.snapshot(new SnapshotParameters(), null);
    BufferedImage image = SwingFXUtils.fromFXImage(picture, null);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, "png", bytes);
    return bytes.toByteArray();
  }
}
