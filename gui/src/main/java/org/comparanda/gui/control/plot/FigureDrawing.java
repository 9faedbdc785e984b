package org.comparanda.gui.control.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A figure laid out on a sheet of a given size: the same strokes for every pen.
 *
 * <p>Units: points (on screen, logical pixels). Errors: none; what lies outside the axes is cut off
 * at the frame.
 */
public final class FigureDrawing {
  private final Figure figure;
  private final Palette palette;
  private final double textSize;
  private final Box sheet;
  private final Box plot;
  private final Legend legend;

  private FigureDrawing(Figure figure, Palette palette, Box sheet, double textSize) {
    this.figure = figure;
    this.palette = palette;
    this.sheet = sheet;
    this.textSize = textSize;
    this.legend = new Legend(figure, palette, textSize);
    double labels =
        Ticks.of(figure.y()).labelled().stream()
            .mapToDouble(v -> Letters.width(figure.y().label(v), textSize))
            .max()
            .orElse(0);
    double left = labels + 2.9 * textSize;
    double top = 1.1 * textSize;
    double bottom = (figure.note().isEmpty() ? 3.6 : 5.2) * textSize;
    this.plot =
        new Box(
            left,
            top,
            Math.max(1, sheet.width() - left - legend.width() - 2 * textSize),
            Math.max(1, sheet.height() - top - bottom));
  }

  /**
   * Lays the figure out.
   *
   * @param textSize size of tick labels and legend
   */
  public static FigureDrawing of(
      Figure figure, Palette palette, double width, double height, double textSize) {
    return new FigureDrawing(figure, palette, new Box(0, 0, width, height), textSize);
  }

  /** The point under a place on the sheet: the nearest within a thumb's breadth. */
  public Optional<Series.Point> pointAt(Xy place) {
    record Near(Series.Point point, double distance) {}
    return figure.series().stream()
        .flatMap(s -> s.points().stream())
        .map(p -> new Near(p, distance(toSheet(p.at()), place)))
        .filter(near -> near.distance() <= textSize)
        .min(java.util.Comparator.comparingDouble(Near::distance))
        .map(Near::point);
  }

  /** Where a point is drawn. */
  public Xy placeOf(Series.Point point) {
    return toSheet(point.at());
  }

  /** Draws all of it. */
  public void draw(Pen pen) {
    pen.area(corners(sheet), palette.ground(), palette.ground(), 0);
    grid(pen);
    pen.within(plot, () -> content(pen));
    frame(pen);
    figure.bone().ifPresent(bone -> fallingReading(pen, bone));
    legend.draw(pen, new Xy(plot.right() + 1.6 * textSize, plot.y()));
    if (!figure.note().isEmpty()) {
      Xy place = new Xy(plot.x(), sheet.bottom() - 0.7 * textSize);
      pen.text(figure.note(), place, Lettering.of(0.9 * textSize), palette.muted());
    }
  }

  private void grid(Pen pen) {
    for (double value : Ticks.of(figure.x()).labelled()) {
      double x = column(value);
      line(pen, new Xy(x, plot.y()), new Xy(x, plot.bottom()), palette.hair(), 0.8);
    }
    for (double value : Ticks.of(figure.y()).labelled()) {
      double y = row(value);
      line(pen, new Xy(plot.x(), y), new Xy(plot.right(), y), palette.hair(), 0.8);
    }
  }

  private void content(Pen pen) {
    figure.bands().forEach(band -> band(pen, band));
    figure
        .curves()
        .forEach(
            curve ->
                pen.path(
                    curve.points().stream().map(this::toSheet).toList(),
                    palette.ink(),
                    1.6,
                    curve.dash()));
    for (Series series : figure.series()) {
      Tint fill = palette.fillOf(series).withAlpha(0.9);
      for (Series.Point point : series.points()) {
        series.mark().draw(pen, toSheet(point.at()), markRadius(), fill, palette.ink());
      }
    }
    figure.bone().ifPresent(bone -> estimate(pen, bone));
  }

  private void band(Pen pen, Band band) {
    List<Xy> low = new ArrayList<>();
    List<Xy> high = new ArrayList<>();
    for (Band.Edge edge : band.edges()) {
      low.add(toSheet(new Xy(edge.x(), edge.low())));
      high.add(toSheet(new Xy(edge.x(), edge.high())));
    }
    BandLook look = BandLook.of(band.kind(), palette);
    if (look.fill().alpha() > 0) {
      List<Xy> outline = new ArrayList<>(low);
      for (int i = high.size() - 1; i >= 0; i--) {
        outline.add(high.get(i));
      }
      pen.area(outline, look.fill(), look.fill(), 0);
    }
    look.edge()
        .ifPresent(
            dash ->
                Stream.of(low, high)
                    .forEach(edge -> pen.path(edge, palette.muted(), look.edgeWidth(), dash)));
  }

  private void estimate(Pen pen, BonePlace bone) {
    Tint accent = palette.accent();
    Xy middle = toSheet(new Xy(bone.x(), bone.y()));
    double cap = 0.55 * textSize;
    line(pen, new Xy(middle.x(), plot.y()), new Xy(middle.x(), plot.bottom()), accent, 1.2);
    line(pen, new Xy(middle.x(), row(bone.low())), new Xy(middle.x(), row(bone.high())), accent, 3);
    for (double end : List.of(bone.low(), bone.high())) {
      line(pen, new Xy(middle.x() - cap, row(end)), new Xy(middle.x() + cap, row(end)), accent, 2);
    }
    pen.disc(middle, 1.25 * markRadius(), accent, palette.ground(), 1.2);
  }

  private void fallingReading(Pen pen, BonePlace bone) {
    double x = column(bone.x());
    double half = 0.45 * textSize;
    if (x >= plot.x() && x <= plot.right()) {
      List<Xy> arrow =
          List.of(
              new Xy(x - half, plot.y() - 1.6 * half),
              new Xy(x + half, plot.y() - 1.6 * half),
              new Xy(x, plot.y()));
      pen.area(arrow, palette.accent(), palette.accent(), 0);
    }
  }

  private void frame(Pen pen) {
    Lettering small = Lettering.of(textSize);
    double stroke = 0.4 * textSize;
    line(pen, new Xy(plot.x(), plot.y()), new Xy(plot.x(), plot.bottom()), palette.ink(), 1);
    line(
        pen,
        new Xy(plot.x(), plot.bottom()),
        new Xy(plot.right(), plot.bottom()),
        palette.ink(),
        1);
    Ticks across = Ticks.of(figure.x());
    double free = 0;
    for (double value : across.labelled()) {
      below(pen, value, stroke);
      String label = figure.x().label(value);
      double half = Letters.width(label, textSize) / 2;
      if (column(value) - half >= free) {
        Xy place = new Xy(column(value), plot.bottom() + 1.5 * textSize);
        pen.text(label, place, small.with(Lettering.Anchor.MIDDLE), palette.muted());
        free = column(value) + half + 0.5 * textSize;
      }
    }
    across.between().forEach(value -> below(pen, value, stroke / 2));
    Ticks up = Ticks.of(figure.y());
    for (double value : up.labelled()) {
      beside(pen, value, stroke);
      Xy place = new Xy(plot.x() - 0.75 * textSize, row(value) + 0.36 * textSize);
      pen.text(figure.y().label(value), place, small.with(Lettering.Anchor.END), palette.muted());
    }
    up.between().forEach(value -> beside(pen, value, stroke / 2));
    titles(pen);
  }

  private void titles(Pen pen) {
    Lettering title =
        Lettering.of(1.05 * textSize).with(Lettering.Face.BOLD).with(Lettering.Anchor.MIDDLE);
    Xy under = new Xy(plot.x() + plot.width() / 2, plot.bottom() + 3.1 * textSize);
    pen.text(figure.x().title(), under, title, palette.ink());
    Xy left = new Xy(1.1 * textSize, plot.y() + plot.height() / 2);
    pen.text(figure.y().title(), left, title.with(Lettering.Turn.UPWARDS), palette.ink());
  }

  private void below(Pen pen, double value, double length) {
    double x = column(value);
    line(pen, new Xy(x, plot.bottom()), new Xy(x, plot.bottom() + length), palette.ink(), 1);
  }

  private void beside(Pen pen, double value, double length) {
    double y = row(value);
    line(pen, new Xy(plot.x() - length, y), new Xy(plot.x(), y), palette.ink(), 1);
  }

  private void line(Pen pen, Xy from, Xy to, Tint colour, double width) {
    pen.path(List.of(from, to), colour, width, Dash.SOLID);
  }

  private double markRadius() {
    return 0.34 * textSize;
  }

  private double column(double value) {
    return plot.x() + plot.width() * figure.x().part(value);
  }

  private double row(double value) {
    return plot.bottom() - plot.height() * figure.y().part(value);
  }

  private Xy toSheet(Xy data) {
    return new Xy(column(data.x()), row(data.y()));
  }

  private static double distance(Xy a, Xy b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  static List<Xy> corners(Box box) {
    return List.of(
        new Xy(box.x(), box.y()),
        new Xy(box.right(), box.y()),
        new Xy(box.right(), box.bottom()),
        new Xy(box.x(), box.bottom()));
  }
}
