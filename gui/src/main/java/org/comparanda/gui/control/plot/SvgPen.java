package org.comparanda.gui.control.plot;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes SVG 1.1 (W3C Recommendation of 16 August 2011); text stays text. */
final class SvgPen implements Pen {
  private final StringBuilder body = new StringBuilder();
  private final double width;
  private final double height;
  private int clips;

  SvgPen(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** The whole document. */
  String document() {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        + f(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%spt\" height=\"%spt\"",
            width, height)
        + f(" viewBox=\"0 0 %s %s\" font-family=\"Helvetica, Arial, sans-serif\">%n", width, height)
        + body
        + "</svg>\n";
  }

  @Override
  public void area(List<Xy> corners, Tint fill, Tint outline, double strokeWidth) {
    body.append(f("<polygon points=\"%s\"%s", points(corners), fill(fill)));
    body.append(strokeWidth > 0 ? stroke(outline, strokeWidth, Dash.SOLID) : "").append("/>\n");
  }

  @Override
  public void disc(Xy centre, double radius, Tint fill, Tint outline, double strokeWidth) {
    body.append(f("<circle cx=\"%s\" cy=\"%s\" r=\"%s\"", centre.x(), centre.y(), radius));
    body.append(fill(fill)).append(stroke(outline, strokeWidth, Dash.SOLID)).append("/>\n");
  }

  @Override
  public void path(List<Xy> points, Tint colour, double strokeWidth, Dash dash) {
    body.append(f("<polyline points=\"%s\" fill=\"none\"", points(points)));
    body.append(stroke(colour, strokeWidth, dash)).append("/>\n");
  }

  @Override
  public void text(String text, Xy at, Lettering lettering, Tint colour) {
    body.append(f("<text x=\"%s\" y=\"%s\" font-size=\"%s\"", at.x(), at.y(), lettering.size()));
    body.append(fill(colour));
    body.append(
        switch (lettering.face()) {
          case PLAIN -> "";
          case BOLD -> " font-weight=\"bold\"";
          case ITALIC -> " font-style=\"italic\"";
        });
    body.append(
        switch (lettering.anchor()) {
          case START -> "";
          case MIDDLE -> " text-anchor=\"middle\"";
          case END -> " text-anchor=\"end\"";
        });
    if (lettering.turn() == Lettering.Turn.UPWARDS) {
      body.append(f(" transform=\"rotate(-90 %s %s)\"", at.x(), at.y()));
    }
    body.append('>').append(escaped(text)).append("</text>\n");
  }

  @Override
  public void within(Box box, Runnable drawing) {
    String id = "frame" + clips++;
    body.append(f("<clipPath id=\"%s\"><rect x=\"%s\" y=\"%s\"", id, box.x(), box.y()));
    body.append(f(" width=\"%s\" height=\"%s\"/></clipPath>%n", box.width(), box.height()));
    body.append(f("<g clip-path=\"url(#%s)\">%n", id));
    drawing.run();
    body.append("</g>\n");
  }

  private static String points(List<Xy> points) {
    return points.stream()
        .map(p -> number(p.x()) + "," + number(p.y()))
        .collect(Collectors.joining(" "));
  }

  private static String fill(Tint tint) {
    return f(" fill=\"%s\"", tint.hex()) + opacity("fill", tint);
  }

  private static String stroke(Tint tint, double width, Dash dash) {
    String pattern = dash.pattern().stream().map(SvgPen::number).collect(Collectors.joining(" "));
    return f(" stroke=\"%s\" stroke-width=\"%s\"", tint.hex(), width)
        + opacity("stroke", tint)
        + (pattern.isEmpty() ? "" : f(" stroke-dasharray=\"%s\"", pattern));
  }

  private static String opacity(String what, Tint tint) {
    return tint.alpha() < 1 ? f(" %s-opacity=\"%s\"", what, tint.alpha()) : "";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  /** Fills a pattern; numbers are cut to a hundredth of a point. */
  private static String f(String pattern, Object... values) {
    Object[] texts = new Object[values.length];
    for (int i = 0; i < values.length; i++) {
      texts[i] = values[i] instanceof Double number ? number(number) : values[i];
    }
    return String.format(Locale.ROOT, pattern.replace("%n", "\n"), texts);
  }

  private static String number(double value) {
    double rounded = Math.round(value * 100) / 100.0;
    return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
  }
}
