package org.comparanda.gui.control.plot;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontPosture;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** Draws on the screen. */
public final class CanvasPen implements Pen {
  private final GraphicsContext canvas;
  private final String family;
  private Dash dashes = Dash.SOLID;

  public CanvasPen(GraphicsContext canvas, String family) {
    this.canvas = canvas;
    this.family = family;
    canvas.setLineDashes();
  }

  @Override
  public void area(List<Xy> corners, Tint fill, Tint outline, double width) {
    trace(corners);
    canvas.closePath();
    canvas.setFill(colour(fill));
    canvas.fill();
    if (width > 0) {
      stroke(outline, width, Dash.SOLID);
      canvas.stroke();
    }
  }

  @Override
  public void disc(Xy centre, double radius, Tint fill, Tint outline, double width) {
    double x = centre.x() - radius;
    double y = centre.y() - radius;
    canvas.setFill(colour(fill));
    canvas.fillOval(x, y, 2 * radius, 2 * radius);
    stroke(outline, width, Dash.SOLID);
    canvas.strokeOval(x, y, 2 * radius, 2 * radius);
  }

  @Override
  public void path(List<Xy> points, Tint colour, double width, Dash dash) {
    trace(points);
    stroke(colour, width, dash);
    canvas.stroke();
  }

  @Override
  public void text(String text, Xy at, Lettering lettering, Tint colour) {
    canvas.save();
    canvas.translate(at.x(), at.y());
    if (lettering.turn() == Lettering.Turn.UPWARDS) {
      canvas.rotate(-90);
    }
    canvas.setFont(font(family, lettering));
    canvas.setTextAlign(
        switch (lettering.anchor()) {
          case START -> TextAlignment.LEFT;
          case MIDDLE -> TextAlignment.CENTER;
          case END -> TextAlignment.RIGHT;
        });
    canvas.setFill(colour(colour));
    canvas.fillText(text, 0, 0);
    canvas.restore();
  }

  @Override
  public void within(Box box, Runnable drawing) {
    canvas.save();
    canvas.beginPath();
    canvas.rect(box.x(), box.y(), box.width(), box.height());
    canvas.clip();
    drawing.run();
    canvas.restore();
  }

  /** The font that this pen writes a lettering with. */
  public static Font font(String family, Lettering lettering) {
    return Font.font(
        family,
        lettering.face() == Lettering.Face.BOLD ? FontWeight.BOLD : FontWeight.NORMAL,
        lettering.face() == Lettering.Face.ITALIC ? FontPosture.ITALIC : FontPosture.REGULAR,
        lettering.size());
  }

  private void trace(List<Xy> points) {
    canvas.beginPath();
    canvas.moveTo(points.get(0).x(), points.get(0).y());
    points.stream().skip(1).forEach(p -> canvas.lineTo(p.x(), p.y()));
  }

  private void stroke(Tint tint, double width, Dash dash) {
    canvas.setStroke(colour(tint));
    canvas.setLineWidth(width);
    if (dash != dashes) {
      canvas.setLineDashes(dash.pattern().stream().mapToDouble(d -> d).toArray());
      dashes = dash;
    }
  }

  private static Color colour(Tint tint) {
    return Color.color(tint.red(), tint.green(), tint.blue(), tint.alpha());
  }
}
