package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.comparanda.gui.control.plot.Axis;
import org.comparanda.gui.control.plot.AxisScale;
import org.comparanda.gui.control.plot.Band;
import org.comparanda.gui.control.plot.BonePlace;
import org.comparanda.gui.control.plot.Curve;
import org.comparanda.gui.control.plot.Dash;
import org.comparanda.gui.control.plot.Figure;
import org.comparanda.gui.control.plot.Series;
import org.comparanda.gui.control.plot.Xy;
import org.comparanda.reference.AnimalId;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineBand;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.sizeestimate.SizeEstimate;

/** The plot of a finding: animals, line, bands, the second line, the bone. */
final class LineFigure {
  private static final int STEPS = 60;
  private final Sheet sheet;
  private final SizeFinding finding;

  LineFigure(Sheet sheet, SizeFinding finding) {
    this.sheet = sheet;
    this.finding = finding;
  }

  Figure of(FittedLine line) {
    Optional<FittedLine> beside =
        finding.beside().filter(b -> b.question().from().equals(line.question().from()));
    List<Series> series = series(line, beside);
    Optional<BonePlace> bone = bone();
    DoubleStream xs =
        DoubleStream.concat(
            places(series).mapToDouble(Xy::x), bone.stream().mapToDouble(b -> b.x()));
    DoubleStream ys =
        DoubleStream.concat(
            places(series).mapToDouble(Xy::y),
            bone.stream().flatMapToDouble(b -> DoubleStream.of(b.low(), b.high())));
    Axis x = Axis.around(sheet.across().axis(sheet.from().name()), axes(), xs);
    Axis y = Axis.around(sheet.up().axis(sheet.predict().name()), axes(), ys);
    List<Curve> curves = new ArrayList<>();
    List<Band> bands = new ArrayList<>();
    List<LineBand> along = along(line, x);
    String level = sheet.level(line);
    bands.add(
        new Band(sheet.words().get("band.animal", level), Band.Kind.PREDICTION, prediction(along)));
    bands.add(
        new Band(sheet.words().get("band.mean", level), Band.Kind.CONFIDENCE, confidence(along)));
    curves.add(new Curve(sheet.names().of(line), Dash.SOLID, curve(line, x)));
    beside.ifPresent(
        second -> {
          curves.add(new Curve(sheet.names().of(second), Dash.DASHED, curve(second, x)));
          bands.add(
              new Band(
                  sheet.words().get("band.beside", level),
                  Band.Kind.PREDICTION_BESIDE,
                  prediction(along(second, x))));
        });
    bands.removeIf(b -> b.edges().isEmpty());
    return new Figure(
        x.in(sheet.locale()), y.in(sheet.locale()), series, curves, bands, bone, sheet.note());
  }

  private AxisScale axes() {
    return sheet.axes();
  }

  private static Stream<Xy> places(List<Series> series) {
    return series.stream().flatMap(s -> s.points().stream()).map(Series.Point::at);
  }

  private List<Series> series(FittedLine line, Optional<FittedLine> beside) {
    Map<AnimalId, LinePoint> points = new LinkedHashMap<>();
    line.points().forEach(p -> points.put(p.animals().get(0), p));
    beside.ifPresent(
        second -> second.points().forEach(p -> points.putIfAbsent(p.animals().get(0), p)));
    return new KindSeries(sheet, line)
        .of(points.values(), p -> new Xy(sheet.across().of(p.x().get(0)), sheet.up().of(p.y())));
  }

  /** The bone's value of the measurement across. */
  private Optional<Double> reading() {
    return Optional.ofNullable(finding.ask().values().get(sheet.from().key()));
  }

  private Optional<BonePlace> bone() {
    Optional<SizeEstimate> estimate = finding.estimate().flatMap(e -> e.value());
    return estimate.map(
        e -> {
          double middle = e.estimate();
          double low = e.prediction().fold(p -> p.lower(), none -> middle);
          double high = e.prediction().fold(p -> p.upper(), none -> middle);
          return new BonePlace(
              sheet.words().get("bone"),
              sheet.across().of(reading().orElseThrow()),
              sheet.up().of(middle),
              sheet.up().of(low),
              sheet.up().of(high));
        });
  }

  private List<Xy> curve(FittedLine line, Axis x) {
    List<LineBand> along = along(line, x);
    if (!along.isEmpty()) {
      return along.stream()
          .map(b -> new Xy(sheet.across().of(b.x()), sheet.up().of(b.fit())))
          .toList();
    }
    // A line without intervals (a major axis) is drawn from its own estimates.
    return steps(line, x).stream()
        .flatMap(
            v ->
                line.estimate(Map.of(sheet.from().key(), v)).value().stream()
                    .map(
                        e ->
                            new Xy(sheet.across().of(v), sheet.up().of(e.estimate() / e.factor()))))
        .toList();
  }

  private List<LineBand> along(FittedLine line, Axis x) {
    return steps(line, x).stream().flatMap(v -> line.band(v).value().stream()).toList();
  }

  /** Places along the line in the quantity's own unit, evenly spread on the axis. */
  private List<Double> steps(FittedLine line, Axis x) {
    double low = line.xRange().get(0).low();
    double high = line.xRange().get(0).high();
    double bone = reading().orElse(low);
    double from = Math.max(sheet.across().inOne() * x.low(), Math.min(low, bone));
    double to = Math.max(high, bone);
    return IntStream.rangeClosed(0, STEPS)
        .mapToObj(
            i ->
                axes() == AxisScale.LOG
                    ? from * Math.pow(to / from, i / (double) STEPS)
                    : from + (to - from) * i / STEPS)
        .toList();
  }

  private List<Band.Edge> prediction(List<LineBand> along) {
    return along.stream()
        .map(
            b ->
                new Band.Edge(
                    sheet.across().of(b.x()),
                    sheet.up().of(b.prediction().lower()),
                    sheet.up().of(b.prediction().upper())))
        .toList();
  }

  private List<Band.Edge> confidence(List<LineBand> along) {
    return along.stream()
        .map(
            b ->
                new Band.Edge(
                    sheet.across().of(b.x()),
                    sheet.up().of(b.confidence().lower()),
                    sheet.up().of(b.confidence().upper())))
        .toList();
  }
}
