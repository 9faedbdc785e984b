package org.comparanda.gui.control.plot;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Writes a one-page PDF 1.4 (Adobe's reference, third edition) with the reader's own Helvetica, so
 * that lines and letters stay lines and letters. A character outside the Windows Latin set is
 * written as a question mark.
 */
final class PdfPen implements Pen {
  private static final Charset LATIN = Charset.forName("windows-1252");
  private static final double ROUND = 0.5523;
  private final StringBuilder page = new StringBuilder();
  private final SortedSet<Integer> opacities = new TreeSet<>();
  private final double width;
  private final double height;

  PdfPen(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** The whole file. */
  byte[] document() {
    StringBuilder states = new StringBuilder();
    opacities.forEach(o -> states.append(f("/G%d << /ca %s /CA %s >> ", o, o / 100.0, o / 100.0)));
    String fonts = font(1, "Helvetica") + font(2, "Helvetica-Bold") + font(3, "Helvetica-Oblique");
    List<String> objects = new ArrayList<>();
    objects.add("<< /Type /Catalog /Pages 2 0 R >>");
    objects.add("<< /Type /Pages /Kids [3 0 R] /Count 1 >>");
    objects.add(
        f("<< /Type /Page /Parent 2 0 R /MediaBox [0 0 %s %s] /Contents 4 0 R", width, height)
            + " /Resources << /Font << "
            + fonts
            + ">> /ExtGState << "
            + states
            + ">> >> >>");
    objects.add(f("<< /Length %d >>\nstream\n", page.length()) + page + "endstream");
    return file(objects).getBytes(LATIN);
  }

  private static String file(List<String> objects) {
    StringBuilder file = new StringBuilder("%PDF-1.4\n");
    List<Integer> starts = new ArrayList<>();
    for (int i = 0; i < objects.size(); i++) {
      starts.add(file.length());
      file.append(i + 1).append(" 0 obj\n").append(objects.get(i)).append("\nendobj\n");
    }
    int table = file.length();
    file.append(f("xref\n0 %d\n0000000000 65535 f \n", objects.size() + 1));
    starts.forEach(start -> file.append(f("%010d 00000 n \n", start)));
    file.append(f("trailer\n<< /Size %d /Root 1 0 R >>\n", objects.size() + 1));
    return file.append(f("startxref\n%d\n%%%%EOF\n", table)).toString();
  }

  private static String font(int number, String name) {
    return f("/F%d << /Type /Font /Subtype /Type1 /BaseFont /%s", number, name)
        + " /Encoding /WinAnsiEncoding >> ";
  }

  @Override
  public void area(List<Xy> corners, Tint fill, Tint outline, double strokeWidth) {
    colours(fill, outline, strokeWidth, Dash.SOLID);
    trace(corners);
    page.append(strokeWidth > 0 ? "b\n" : "h f\n");
  }

  @Override
  public void disc(Xy centre, double radius, Tint fill, Tint outline, double strokeWidth) {
    colours(fill, outline, strokeWidth, Dash.SOLID);
    double x = centre.x();
    double y = height - centre.y();
    double r = radius;
    double k = radius * ROUND;
    page.append(f("%s %s m ", x + r, y));
    page.append(f("%s %s %s %s %s %s c ", x + r, y + k, x + k, y + r, x, y + r));
    page.append(f("%s %s %s %s %s %s c ", x - k, y + r, x - r, y + k, x - r, y));
    page.append(f("%s %s %s %s %s %s c ", x - r, y - k, x - k, y - r, x, y - r));
    page.append(f("%s %s %s %s %s %s c b\n", x + k, y - r, x + r, y - k, x + r, y));
  }

  @Override
  public void path(List<Xy> points, Tint colour, double strokeWidth, Dash dash) {
    colours(colour, colour, strokeWidth, dash);
    trace(points);
    page.append("S\n");
  }

  @Override
  public void text(String text, Xy at, Lettering lettering, Tint colour) {
    colours(colour, colour, 1, Dash.SOLID);
    double room = HelveticaWidths.of(text, lettering);
    double back =
        switch (lettering.anchor()) {
          case START -> 0;
          case MIDDLE -> room / 2;
          case END -> room;
        };
    boolean level = lettering.turn() == Lettering.Turn.LEVEL;
    double x = level ? at.x() - back : at.x();
    double y = level ? height - at.y() : height - at.y() - back;
    page.append(f("BT /F%d %s Tf ", fontOf(lettering.face()), lettering.size()));
    page.append(level ? f("1 0 0 1 %s %s Tm ", x, y) : f("0 1 -1 0 %s %s Tm ", x, y));
    page.append('(').append(escaped(text)).append(") Tj ET\n");
  }

  @Override
  public void within(Box box, Runnable drawing) {
    page.append(f("q %s %s ", box.x(), height - box.bottom()));
    page.append(f("%s %s re W n\n", box.width(), box.height()));
    drawing.run();
    page.append("Q\n");
  }

  private static int fontOf(Lettering.Face face) {
    return switch (face) {
      case PLAIN -> 1;
      case BOLD -> 2;
      case ITALIC -> 3;
    };
  }

  private void trace(List<Xy> points) {
    String verb = "m";
    for (Xy point : points) {
      page.append(f("%s %s ", point.x(), height - point.y())).append(verb).append(' ');
      verb = "l";
    }
  }

  private void colours(Tint fill, Tint outline, double strokeWidth, Dash dash) {
    int percent = (int) Math.round(100 * fill.alpha());
    opacities.add(percent);
    page.append(f("/G%d gs ", percent));
    page.append(f("%s %s %s rg ", fill.red(), fill.green(), fill.blue()));
    page.append(f("%s %s %s RG ", outline.red(), outline.green(), outline.blue()));
    page.append(f("%s w [", strokeWidth));
    dash.pattern().forEach(length -> page.append(f("%s ", length)));
    page.append("] 0 d ");
  }

  private static String escaped(String text) {
    return text.replace('\u2212', '\u2013')
        .replace("\\", "\\\\")
        .replace("(", "\\(")
        .replace(")", "\\)");
  }

  private static String f(String pattern, Object... values) {
    Object[] texts = new Object[values.length];
    for (int i = 0; i < values.length; i++) {
      texts[i] =
          values[i] instanceof Double number
              ? String.format(Locale.ROOT, "%.3f", number)
              : values[i];
    }
    return String.format(Locale.ROOT, pattern.replace("%n", "\n"), texts);
  }
}
