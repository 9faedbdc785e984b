package org.comparanda.gui.control.plot;

import java.util.List;
import java.util.stream.Stream;

/**
 * Names of kinds, lines, bands and the bone, beside the plot; what has no name is left out, and a
 * kind without points has no mark.
 */
final class Legend {
  private final Figure figure;
  private final Palette palette;
  private final double size;

  Legend(Figure figure, Palette palette, double size) {
    this.figure = figure;
    this.palette = palette;
    this.size = size;
  }

  double width() {
    Stream<String> names =
        Stream.of(
                figure.series().stream().map(Series::name),
                figure.curves().stream().map(Curve::name),
                figure.bands().stream().map(Band::name),
                figure.bone().stream().map(BonePlace::name))
            .flatMap(s -> s);
    return names.mapToDouble(n -> Letters.width(n, size)).max().orElse(0) + sample() + 0.8 * size;
  }

  void draw(Pen pen, Xy corner) {
    double y = corner.y() + 0.5 * size;
    double x = corner.x();
    List<Series> named = figure.series().stream().filter(k -> !k.name().isEmpty()).toList();
    for (Series series : named) {
      if (!series.points().isEmpty()) {
        Xy middle = new Xy(x + sample() / 2, y);
        series.mark().draw(pen, middle, 0.36 * size, palette.fillOf(series), palette.ink());
      }
      name(pen, series.name(), series.face(), x, y);
      y += step();
    }
    y += named.isEmpty() ? 0 : 0.5 * step();
    for (Curve curve : figure.curves().stream().filter(c -> !c.name().isEmpty()).toList()) {
      pen.path(level(x, y), palette.ink(), 1.6, curve.dash());
      name(pen, curve.name(), Lettering.Face.PLAIN, x, y);
      y += step();
    }
    for (Band band : figure.bands()) {
      swatch(pen, band, x, y);
      name(pen, band.name(), Lettering.Face.PLAIN, x, y);
      y += step();
    }
    if (figure.bone().isPresent()) {
      pen.path(level(x, y), palette.accent(), 2, Dash.SOLID);
      Xy middle = new Xy(x + sample() / 2, y);
      pen.disc(middle, 0.36 * size, palette.accent(), palette.ground(), 1);
      name(pen, figure.bone().get().name(), Lettering.Face.BOLD, x, y);
    }
  }

  private void swatch(Pen pen, Band band, double x, double y) {
    BandLook look = BandLook.of(band.kind(), palette);
    double half = 0.42 * size;
    if (look.fill().alpha() > 0) {
      Box box = new Box(x, y - half, sample(), 2 * half);
      pen.area(FigureDrawing.corners(box), look.fill(), look.fill(), 0);
    }
    look.edge()
        .ifPresent(
            dash -> {
              pen.path(level(x, y - half), palette.muted(), look.edgeWidth(), dash);
              pen.path(level(x, y + half), palette.muted(), look.edgeWidth(), dash);
            });
  }

  private void name(Pen pen, String name, Lettering.Face face, double x, double y) {
    Xy place = new Xy(x + sample() + 0.6 * size, y + 0.36 * size);
    pen.text(name, place, Lettering.of(size).with(face), palette.ink());
  }

  private List<Xy> level(double x, double y) {
    return List.of(new Xy(x, y), new Xy(x + sample(), y));
  }

  private double sample() {
    return 2.2 * size;
  }

  private double step() {
    return 1.5 * size;
  }
}
