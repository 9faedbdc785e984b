package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.comparanda.gui.control.plot.Axis;
import org.comparanda.gui.control.plot.BonePlace;
import org.comparanda.gui.control.plot.Curve;
import org.comparanda.gui.control.plot.Dash;
import org.comparanda.gui.control.plot.Figure;
import org.comparanda.gui.control.plot.Series;
import org.comparanda.gui.control.plot.Xy;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.sizeestimate.SizeEstimate;

/**
 * The plot of a line with several predictors, which has no flat picture: what is recorded of each
 * animal against what the line says of it.
 */
final class FitFigure {
  private final Sheet sheet;
  private final SizeFinding finding;

  FitFigure(Sheet sheet, SizeFinding finding) {
    this.sheet = sheet;
    this.finding = finding;
  }

  Figure of(FittedLine line) {
    Map<LinePoint, Double> fitted = new HashMap<>();
    line.points().forEach(p -> fit(line, p).ifPresent(f -> fitted.put(p, f)));
    List<LinePoint> placed = line.points().stream().filter(fitted::containsKey).toList();
    List<Series> series =
        new KindSeries(sheet, line)
            .of(
                placed,
                p -> new Xy(sheet.up().of(fitted.getOrDefault(p, p.y())), sheet.up().of(p.y())));
    Optional<BonePlace> bone = bone();
    List<Double> all = new ArrayList<>();
    placed.forEach(p -> all.addAll(List.of(fitted.getOrDefault(p, p.y()), p.y())));
    DoubleStream values = all.stream().mapToDouble(v -> sheet.up().of(v));
    DoubleStream ofBone =
        bone.stream().flatMapToDouble(b -> DoubleStream.of(b.x(), b.low(), b.high()));
    double[] both = DoubleStream.concat(values, ofBone).toArray();
    String name = sheet.predict().name();
    Axis x =
        Axis.around(
            sheet.up().axis(sheet.words().get("fit.x", name)), sheet.axes(), DoubleStream.of(both));
    Axis y =
        Axis.around(
            sheet.up().axis(sheet.words().get("fit.y", name)), sheet.axes(), DoubleStream.of(both));
    Curve same =
        new Curve(
            sheet.words().get("fit.same"),
            Dash.SOLID,
            List.of(new Xy(x.low(), x.low()), new Xy(x.high(), x.high())));
    return new Figure(
        x.in(sheet.locale()),
        y.in(sheet.locale()),
        series,
        List.of(same),
        List.of(),
        bone,
        sheet.note());
  }

  private static Optional<Double> fit(FittedLine line, LinePoint point) {
    Map<String, Double> values = new HashMap<>();
    for (int j = 0; j < point.x().size(); j++) {
      values.put(line.question().from().get(j), point.x().get(j));
    }
    return line.estimate(values).value().map(e -> e.estimate() / e.factor());
  }

  private Optional<BonePlace> bone() {
    Optional<SizeEstimate> estimate = finding.estimate().flatMap(e -> e.value());
    return estimate.map(
        e -> {
          double middle = e.estimate();
          return new BonePlace(
              sheet.words().get("bone"),
              sheet.up().of(middle),
              sheet.up().of(middle),
              sheet.up().of(e.prediction().fold(p -> p.lower(), none -> middle)),
              sheet.up().of(e.prediction().fold(p -> p.upper(), none -> middle)));
        });
  }
}
