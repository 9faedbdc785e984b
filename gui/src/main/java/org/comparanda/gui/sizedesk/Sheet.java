package org.comparanda.gui.sizedesk;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.comparanda.gui.control.plot.AxisScale;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.taxon.TaxonName;

/**
 * What every picture and text of one finding shares.
 *
 * @param predictors the measurements at hand, those of the line first
 * @param predict the quantity wanted
 * @param across unit of {@code from} as shown
 * @param up unit of {@code predict} as shown
 * @param axes plain or logarithmic, both axes alike
 * @param taxa all taxa of the shelf; a taxon's colour and shape are its place here
 * @param names what lines are called
 * @param note small print of every picture, may be empty
 */
record Sheet(
    List<Quantity> predictors,
    Quantity predict,
    ShownUnit across,
    ShownUnit up,
    AxisScale axes,
    List<TaxonName> taxa,
    LineNames names,
    Words words,
    Locale locale,
    String note) {
  Sheet {
    predictors = List.copyOf(predictors);
    taxa = List.copyOf(taxa);
  }

  /** The measurement at hand, the first one of the line. */
  Quantity from() {
    return predictors.get(0);
  }

  /** A predictor's name, for a sentence's beginning or a list. */
  String name(String key) {
    return named(key).map(Quantity::name).orElse(key);
  }

  /** A predictor's name inside a sentence. */
  String noun(String key) {
    return named(key).map(Quantity::noun).orElse(key);
  }

  private Optional<Quantity> named(String key) {
    return predictors.stream().filter(q -> q.key().equals(key)).findFirst();
  }

  /** The level of a line's intervals, {@code 95 %}. */
  String level(FittedLine line) {
    return new Numbers(locale).upTo(100 * line.question().level(), 1) + " %";
  }

  static Sheet of(
      List<Quantity> predictors,
      Quantity predict,
      FittedLine line,
      AxisScale axes,
      Shelf shelf,
      LineNames names,
      Words words,
      Locale locale,
      String note) {
    double largestX = line.points().stream().mapToDouble(p -> p.x().get(0)).max().orElse(1);
    double largestY = line.points().stream().mapToDouble(LinePoint::y).max().orElse(1);
    return new Sheet(
        predictors,
        predict,
        ShownUnit.of(predictors.get(0).unit(), largestX),
        ShownUnit.of(predict.unit(), largestY),
        axes,
        shelf.taxa(),
        names,
        words,
        locale,
        note);
  }

  /** Who a point is, for the pointer: number, taxon, drawer, both values. */
  String tip(LinePoint point) {
    boolean mean = point.animals().size() > 1;
    String who =
        mean
            ? words.get("tip.mean", taxon(point), point.animals().size())
            : words.get("tip.who", point.label(), taxon(point));
    String where =
        point.drawer().map(d -> words.get("tip.drawer", d)).orElse(words.get("tip.elsewhere"));
    String measured =
        IntStream.range(0, point.x().size())
            .mapToObj(
                j ->
                    predictors.get(j).name()
                        + " "
                        + ShownUnit.of(predictors.get(j).unit(), point.x().get(j))
                            .measured(point.x().get(j), locale))
            .collect(Collectors.joining(", "));
    String values =
        words.get("tip.values", measured, predict.name(), up.measured(point.y(), locale));
    return mean ? who + "\n" + values : who + "\n" + where + "\n" + values;
  }

  /** Whose card a click opens; empty for a mean of several. */
  static String animal(LinePoint point) {
    return point.animals().size() == 1 ? point.animals().get(0).value() : "";
  }

  static String taxon(LinePoint point) {
    return point.taxon().map(TaxonName::value).orElse("");
  }
}
