package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.comparanda.gui.control.plot.Axis;
import org.comparanda.gui.control.plot.AxisScale;
import org.comparanda.gui.control.plot.Curve;
import org.comparanda.gui.control.plot.Dash;
import org.comparanda.gui.control.plot.Figure;
import org.comparanda.gui.control.plot.KindLook;
import org.comparanda.gui.control.plot.Lettering;
import org.comparanda.gui.control.plot.Series;
import org.comparanda.gui.control.plot.Xy;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.sizeestimate.LineScale;
import org.comparanda.statistics.line.Diagnostics;
import org.comparanda.taxon.TaxonName;

/** Whether a line can be trusted, in three pictures of its own animals. */
final class DiagnosticFigures {
  private final Sheet sheet;
  private final FittedLine line;
  private final List<Diagnostics.Row> rows;

  private DiagnosticFigures(Sheet sheet, FittedLine line, List<Diagnostics.Row> rows) {
    this.sheet = sheet;
    this.line = line;
    this.rows = rows;
  }

  /** Residuals, influence, held-out errors; none for a line without them. */
  static List<Figure> of(Sheet sheet, FittedLine line) {
    return line.diagnostics()
        .fold(
            d -> {
              DiagnosticFigures figures = new DiagnosticFigures(sheet, line, d.rows());
              return List.of(figures.residuals(), figures.influence(), figures.heldOut());
            },
            none -> List.of());
  }

  private Figure residuals() {
    double s = line.residualStandardError();
    List<Optional<Xy>> places =
        rows.stream()
            .map(
                r ->
                    Optional.of(new Xy(sheet.up().of(line.scale().back(r.fitted())), r.residual())))
            .toList();
    Axis x = axis(sheet.up().axis(word("residuals.x")), sheet.axes(), xs(places));
    Axis y =
        axis(
            word("residuals.y"),
            AxisScale.PLAIN,
            DoubleStream.concat(ys(places), DoubleStream.of(-2 * s, 2 * s)));
    List<Curve> curves =
        List.of(
            level(word("residuals.zero"), Dash.SOLID, x, 0),
            level(word("residuals.twos"), Dash.DASHED, x, 2 * s),
            level("", Dash.DASHED, x, -2 * s));
    return figure(x, y, series(places), curves);
  }

  private Figure influence() {
    List<Optional<Xy>> places =
        rows.stream()
            .map(r -> r.cooksDistance().value().map(c -> new Xy(r.leverage(), c)))
            .toList();
    double mean = (rows.size() - line.degreesOfFreedom()) / (double) rows.size();
    Axis x =
        axis(
            word("influence.x"),
            AxisScale.PLAIN,
            DoubleStream.concat(xs(places), DoubleStream.of(0, 2.2 * mean)));
    Axis y =
        axis(
            word("influence.y"),
            AxisScale.PLAIN,
            DoubleStream.concat(ys(places), DoubleStream.of(0, 0.5)));
    List<Curve> curves =
        List.of(
            level(word("influence.half"), Dash.DASHED, x, 0.5),
            new Curve(
                word("influence.twice"),
                Dash.DOTTED,
                List.of(new Xy(2 * mean, y.low()), new Xy(2 * mean, y.high()))));
    return figure(x, y, series(places), curves);
  }

  private Figure heldOut() {
    List<Optional<Xy>> places =
        IntStream.range(0, rows.size())
            .mapToObj(i -> heldOut(line.points().get(i), rows.get(i)))
            .toList();
    Axis x = axis(sheet.up().axis(word("heldout.x")), sheet.axes(), xs(places));
    Axis y =
        axis(
            word("heldout.y"),
            AxisScale.PLAIN,
            DoubleStream.concat(ys(places), DoubleStream.of(0)));
    return figure(x, y, series(places), List.of(level(word("heldout.zero"), Dash.SOLID, x, 0)));
  }

  private Optional<Xy> heldOut(LinePoint point, Diagnostics.Row row) {
    LineScale scale = line.scale();
    return row.heldOutFit()
        .value()
        .map(scale::back)
        .map(fit -> new Xy(sheet.up().of(point.y()), 100 * (point.y() - fit) / fit));
  }

  private Figure figure(Axis x, Axis y, List<Series> series, List<Curve> curves) {
    return new Figure(
        x.in(sheet.locale()),
        y.in(sheet.locale()),
        series,
        curves,
        List.of(),
        Optional.empty(),
        sheet.note());
  }

  /** Kinds are named beside the plot of the line, not here. */
  private List<Series> series(List<Optional<Xy>> places) {
    Map<String, List<Series.Point>> byTaxon = new TreeMap<>();
    for (int i = 0; i < places.size(); i++) {
      LinePoint point = line.points().get(i);
      List<Series.Point> points =
          byTaxon.computeIfAbsent(Sheet.taxon(point), t -> new ArrayList<>());
      places
          .get(i)
          .ifPresent(at -> points.add(new Series.Point(Sheet.animal(point), sheet.tip(point), at)));
    }
    List<String> all = sheet.taxa().stream().map(TaxonName::value).toList();
    return byTaxon.entrySet().stream()
        .map(
            e -> {
              KindLook look = KindLook.of(Math.max(0, all.indexOf(e.getKey())));
              return new Series(
                  "", Lettering.Face.ITALIC, look.mark(), look.light(), look.dark(), e.getValue());
            })
        .toList();
  }

  private static Curve level(String name, Dash dash, Axis x, double y) {
    return new Curve(name, dash, List.of(new Xy(x.low(), y), new Xy(x.high(), y)));
  }

  private static Axis axis(String title, AxisScale scale, DoubleStream values) {
    return Axis.around(title, scale, values);
  }

  private static DoubleStream xs(List<Optional<Xy>> places) {
    return places.stream().flatMap(Optional::stream).mapToDouble(Xy::x);
  }

  private static DoubleStream ys(List<Optional<Xy>> places) {
    return places.stream().flatMap(Optional::stream).mapToDouble(Xy::y);
  }

  private String word(String key) {
    return sheet.words().get("diagnostic." + key);
  }
}
