package org.comparanda.gui.control.plot;

import java.nio.file.Path;
import java.util.Locale;

/** Writes a figure for print: as wide as the text of a journal page, always on white. */
public final class FigureExport {
  static final double WIDTH = Print.PAGE_WIDTH;
  static final double HEIGHT = 312;

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
   * <p>Errors: {@link java.io.UncheckedIOException} if the file can't be written
   */
  public static void write(Figure figure, Format format, Path file) {
    print(FigureDrawing.of(figure, Palette.LIGHT, WIDTH, HEIGHT, Print.TEXT)).write(format, file);
  }

  static String svg(FigureDrawing drawing) {
    return print(drawing).svg();
  }

  static byte[] pdf(FigureDrawing drawing) {
    return print(drawing).pdf();
  }

  private static Print print(FigureDrawing drawing) {
    return new Print(WIDTH, HEIGHT, drawing::draw);
  }
}
